-- What is remembered of a person. Stored words are those of the contract and never change meaning.
CREATE TABLE person (
    -- The sender as the channel names it.
    id TEXT NOT NULL PRIMARY KEY,
    -- BCP 47, as set by the person.
    language TEXT,
    -- metric, us or imperial, as set by the person.
    units TEXT,
    -- open or stopped.
    listening TEXT NOT NULL,
    -- Where the conversation stands: JSON, with its own version.
    talk TEXT NOT NULL,
    -- Last message, seconds since 1970.
    seen_at INTEGER NOT NULL
) STRICT;

-- The bottle or box at hand.
CREATE TABLE bottle (
    person_id TEXT NOT NULL PRIMARY KEY REFERENCES person (id) ON DELETE CASCADE,
    product TEXT,
    strength_percent REAL,
    tablet_mg REAL,
    -- ISO date.
    opened TEXT,
    -- Seconds since 1970.
    told_at INTEGER NOT NULL
) STRICT;
