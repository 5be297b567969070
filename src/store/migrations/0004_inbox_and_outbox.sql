-- Messages that came in: committed before the network is told that we have them.
CREATE TABLE inbox (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    channel TEXT NOT NULL,
    -- Keyed hash of what the delivery is known by. Kept for ever: it is never answered again.
    delivery BLOB NOT NULL,
    -- When the session began, milliseconds since 1970; 0 where the network names its deliveries.
    session INTEGER NOT NULL,
    -- Keyed hash of the sender.
    person_id TEXT NOT NULL,
    -- Sealed; empty once it is settled.
    address BLOB NOT NULL,
    body BLOB NOT NULL,
    -- Milliseconds since 1970.
    received_at INTEGER NOT NULL,
    -- 0 waiting, 1 answered, 2 set aside, 3 could not be answered, 4 part of a long message whose
    -- others are to come, 5 part of one that another row stands for. Never used for anything else.
    state INTEGER NOT NULL,
    -- Which part of which long message; 0, 1 and 1 where it is all.
    reference INTEGER NOT NULL DEFAULT 0,
    total INTEGER NOT NULL DEFAULT 1,
    number INTEGER NOT NULL DEFAULT 1,
    -- The row that stands for the long message; 0 where it is all, or parts are to come.
    whole_id INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE INDEX inbox_delivery ON inbox (delivery, channel, received_at);
CREATE INDEX inbox_waiting ON inbox (id) WHERE state = 0;
CREATE INDEX inbox_part ON inbox (person_id) WHERE state = 4;
CREATE INDEX inbox_whole ON inbox (whole_id) WHERE whole_id > 0;

-- Messages that go out.
CREATE TABLE outbox (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    channel TEXT NOT NULL,
    -- Sealed; empty once it is accepted or given up.
    address BLOB NOT NULL,
    body BLOB NOT NULL,
    -- JSON list; empty once it is accepted or given up.
    next_words TEXT NOT NULL,
    -- 0 waiting, 1 being sent, 2 accepted, 3 delivered, 4 not delivered, 5 given up.
    state INTEGER NOT NULL,
    -- Counted before the attempt is made.
    attempts INTEGER NOT NULL DEFAULT 0,
    parts_accepted INTEGER NOT NULL DEFAULT 0,
    -- Milliseconds since 1970, all three.
    made_at INTEGER NOT NULL,
    due_at INTEGER NOT NULL,
    settled_at INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE INDEX outbox_due ON outbox (channel, due_at) WHERE state < 2;
CREATE INDEX outbox_settled ON outbox (settled_at) WHERE state >= 2;

-- The network's names of what it accepted, for its receipts.
CREATE TABLE carried (
    channel TEXT NOT NULL,
    carrier_id TEXT NOT NULL,
    outbox_id INTEGER NOT NULL REFERENCES outbox (id) ON DELETE CASCADE,
    PRIMARY KEY (channel, carrier_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX carried_outbox ON carried (outbox_id);

-- What was asked and what came of it, without its words.
CREATE TABLE question (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    channel TEXT NOT NULL,
    person_id TEXT NOT NULL,
    -- Milliseconds since 1970.
    at INTEGER NOT NULL,
    -- BCP 47.
    language TEXT NOT NULL,
    -- The contract's words.
    topic TEXT NOT NULL,
    request TEXT NOT NULL,
    -- answered, asked, refused or not_understood.
    outcome TEXT NOT NULL,
    -- The field asked for, or the reason of a refusal.
    detail TEXT NOT NULL,
    segments INTEGER NOT NULL
) STRICT;

CREATE INDEX question_at ON question (at);
CREATE INDEX question_person ON question (person_id);

-- Messages that were not understood, telephone numbers blanked, for as long as the
-- configuration says.
CREATE TABLE unread (
    question_id INTEGER NOT NULL PRIMARY KEY REFERENCES question (id) ON DELETE CASCADE,
    at INTEGER NOT NULL,
    language TEXT NOT NULL,
    body TEXT NOT NULL
) STRICT;

CREATE INDEX unread_at ON unread (at);

-- Where a reminder goes: sealed, empty while nothing is to be sent unasked.
ALTER TABLE person ADD COLUMN channel TEXT NOT NULL DEFAULT '';
ALTER TABLE person ADD COLUMN address BLOB NOT NULL DEFAULT x'';

-- One row that is written to see whether the store can be.
CREATE TABLE heartbeat (
    only INTEGER NOT NULL PRIMARY KEY CHECK (only = 1),
    at INTEGER NOT NULL
) STRICT;
