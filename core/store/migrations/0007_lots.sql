-- Lots: what the box says of a food, and from which day the house feeds from it. A lot is fed until the next one of its food begins.
CREATE TABLE food_lot (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  food TEXT NOT NULL REFERENCES food (code) ON UPDATE CASCADE,
  lot TEXT NOT NULL,
  from_day TEXT NOT NULL,
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  UNIQUE (food, from_day),
  CHECK (lot <> '')
);
