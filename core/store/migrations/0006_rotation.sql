-- Rotations: another bowl every day of a period, made from a version of a diet. Grams are per animal and day, as fed.

-- until_day is in the period. Days before planned_from hold what was fed (as_eaten: they count as eaten); the others are planned.
-- rules: a file (tarebowl-rotation-rules/1). shortfall … aim: what the plan reaches, and what no plan betters.
CREATE TABLE rotation (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  diet TEXT NOT NULL,
  version INTEGER NOT NULL,
  from_day TEXT NOT NULL,
  until_day TEXT NOT NULL,
  planned_from TEXT NOT NULL,
  rules TEXT NOT NULL,
  seed INTEGER NOT NULL,
  as_eaten INTEGER NOT NULL,
  shortfall REAL NOT NULL,
  shortfall_bound REAL NOT NULL,
  days_shortfall REAL NOT NULL,
  days_shortfall_bound REAL NOT NULL,
  wishes_missed REAL NOT NULL,
  wishes_missed_bound REAL NOT NULL,
  aim REAL NOT NULL,
  aim_bound REAL NOT NULL,
  who TEXT NOT NULL,
  made_at TEXT NOT NULL,
  note TEXT NOT NULL,
  FOREIGN KEY (diet, version) REFERENCES diet_version (diet, number) ON UPDATE CASCADE,
  CHECK (rules <> '' AND from_day <= until_day AND planned_from >= from_day)
);

CREATE INDEX rotation_of_version ON rotation (diet, version, from_day);

-- day: 0 is the first of the period. A locked cell of 0 g is a food that is not to be fed that day.
CREATE TABLE rotation_cell (
  owner_id INTEGER NOT NULL REFERENCES rotation (id),
  place INTEGER NOT NULL,
  day INTEGER NOT NULL,
  food TEXT NOT NULL,
  purpose TEXT NOT NULL,
  meal TEXT NOT NULL,
  grams REAL NOT NULL,
  locked INTEGER NOT NULL,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, day, food, purpose, meal),
  CHECK (day >= 0 AND food <> '' AND grams >= 0)
) /* clustered */;
