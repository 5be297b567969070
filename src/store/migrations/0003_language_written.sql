-- The language of the last message, BCP 47: a message too short to tell is read in it.
ALTER TABLE person ADD COLUMN wrote TEXT;
