-- Control pans that still stand: end_g is missing until somebody weighs what came back. Years of leftovers ask for pans by where they
-- stood.
CREATE TABLE control_pan_raised (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  place_name TEXT NOT NULL,
  day TEXT NOT NULL,
  food TEXT NOT NULL,
  food_class TEXT NOT NULL,
  start_g REAL NOT NULL,
  end_g REAL,
  start_at TEXT NOT NULL,
  end_at TEXT NOT NULL,
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  CHECK (start_g > 0 AND end_g >= 0),
  CHECK ((food = '') <> (food_class = ''))
);

INSERT INTO control_pan_raised (id, revision, place_name, day, food, food_class, start_g, end_g, start_at, end_at, who, note)
SELECT id, revision, place_name, day, food, food_class, start_g, end_g, start_at, end_at, who, note FROM control_pan;

DROP TABLE control_pan;

ALTER TABLE control_pan_raised RENAME TO control_pan;

CREATE INDEX control_pan_of_day ON control_pan (day);
CREATE INDEX control_pan_of_place ON control_pan (place_name, day);
CREATE INDEX control_pan_that_stands ON control_pan (day) WHERE end_g IS NULL;
