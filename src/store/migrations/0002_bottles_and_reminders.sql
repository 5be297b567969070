-- Several bottles a person, with what is left in them.
CREATE TABLE bottle_of_several (
    person_id TEXT NOT NULL REFERENCES person (id) ON DELETE CASCADE,
    -- 0 is the one used last.
    place INTEGER NOT NULL,
    product TEXT,
    strength_percent REAL,
    tablet_mg REAL,
    -- ISO date.
    opened TEXT,
    -- Seconds since 1970.
    told_at INTEGER NOT NULL,
    -- What is left and how fast it goes: JSON; mL, grams or tablets by the product.
    left_over TEXT,
    PRIMARY KEY (person_id, place)
) STRICT;

INSERT INTO bottle_of_several
    (person_id, place, product, strength_percent, tablet_mg, opened, told_at)
SELECT person_id, 0, product, strength_percent, tablet_mg, opened, told_at FROM bottle;

DROP TABLE bottle;

ALTER TABLE bottle_of_several RENAME TO bottle;

-- Messages to be sent when a wait is over.
CREATE TABLE reminder (
    person_id TEXT NOT NULL REFERENCES person (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    -- Seconds since 1970.
    due_at INTEGER NOT NULL,
    -- What is waited for.
    kind TEXT NOT NULL,
    -- How long it was.
    wait_min INTEGER NOT NULL,
    PRIMARY KEY (person_id, place)
) STRICT;

CREATE INDEX reminder_due ON reminder (due_at);
