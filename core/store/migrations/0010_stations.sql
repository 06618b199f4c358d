-- Desks of the kitchen that go on without their server. The first two tables are of a desk's own file, its copy of what the kitchen
-- needs, and empty on a server; the third is of the server.

-- Of which server a file is a copy, for which days (counted from 1970-01-01, both in it), and from when.
CREATE TABLE station_copy (
  id INTEGER PRIMARY KEY,
  server TEXT NOT NULL,
  from_day INTEGER NOT NULL,
  until_day INTEGER NOT NULL,
  taken_at TEXT NOT NULL,
  CHECK (id = 1 AND from_day <= until_day)
);

-- What was written down while the server was away, in its order. entry: drawn at random, so that no two in the world are the same.
-- body: what is to be written, complete in itself (JSON). state: 0 waits, 1 the server has something else, 2 sent, 3 set aside by a person.
-- theirs: what the server has (JSON). decided_by: who chose between the two.
CREATE TABLE station_entry (
  id INTEGER PRIMARY KEY,
  entry INTEGER NOT NULL UNIQUE,
  body TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL,
  state INTEGER NOT NULL,
  why TEXT NOT NULL,
  theirs TEXT NOT NULL,
  decided_by TEXT NOT NULL,
  decided_at TEXT NOT NULL,
  CHECK (state BETWEEN 0 AND 3 AND body <> '')
);

-- Entries of desks that the server has taken: one that is sent again, because nobody heard the answer, does nothing.
CREATE TABLE station_sent (
  id INTEGER PRIMARY KEY,
  station TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL
) /* append-only */;
