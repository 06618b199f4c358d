-- What people see of an animal's health: faeces, appetite, signs, blood, treatments. Of one animal or of a group as a whole.
-- at_time is local, HH:MM, empty where nobody said. Body mass and condition stand in tables of their own (0002).

CREATE TABLE observation (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  individual TEXT REFERENCES individual (code) ON UPDATE CASCADE,
  group_code TEXT REFERENCES animal_group (code) ON UPDATE CASCADE,
  on_day TEXT NOT NULL,
  at_time TEXT NOT NULL,
  kind TEXT NOT NULL,
  appetite TEXT,
  note TEXT NOT NULL,
  who TEXT NOT NULL,
  CHECK ((individual IS NULL) <> (group_code IS NULL)),
  CHECK (kind <> '')
);

CREATE INDEX observation_of_individual ON observation (individual, on_day);
CREATE INDEX observation_of_group ON observation (group_code, on_day);

-- A score with all of its scale: which end is liquid differs between scales. One row of an observation at most.
CREATE TABLE observation_score (
  owner_id INTEGER NOT NULL REFERENCES observation (id),
  place INTEGER NOT NULL,
  scale TEXT NOT NULL,
  score REAL NOT NULL,
  lowest REAL NOT NULL,
  highest REAL NOT NULL,
  ideal REAL NOT NULL,
  softer TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (scale <> '' AND lowest < highest AND score >= lowest AND score <= highest)
) /* clustered */;

-- As the lab wrote it: its unit, its range.
CREATE TABLE observation_blood (
  owner_id INTEGER NOT NULL REFERENCES observation (id),
  place INTEGER NOT NULL,
  analyte TEXT NOT NULL,
  amount REAL NOT NULL,
  unit TEXT NOT NULL,
  low REAL,
  high REAL,
  PRIMARY KEY (owner_id, place),
  CHECK (amount >= 0 AND low <= high)
) /* clustered */;

-- Files beside the collection, by their path from its folder.
CREATE TABLE observation_file (
  owner_id INTEGER NOT NULL REFERENCES observation (id),
  place INTEGER NOT NULL,
  path TEXT NOT NULL,
  words TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (path <> '')
) /* clustered */;
