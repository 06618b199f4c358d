-- Feeding days: what the kitchen was to weigh, what went in and what was left; swaps, control pans, the rule of weighing.
-- A zoo writes some three thousand lines a day for ten years and more: they hold small whole numbers only, stand together by group and
-- day, and leave no entry each in the change log. Masses are in milligrams, days are counted from 1970-01-01, times in seconds from
-- 00:00 UTC of the line's day. What was written first is never written over: what goes before it stands in feeding_correction.

-- Words that come again on every sheet: meals, labels, preparations, people.
CREATE TABLE feeding_word (
  id INTEGER PRIMARY KEY,
  word TEXT NOT NULL UNIQUE
);

-- Foods that were ever on a sheet. code: as it was then; food_id is missing where the collection had no such food.
CREATE TABLE fed_food (
  id INTEGER PRIMARY KEY,
  code TEXT NOT NULL,
  food_id INTEGER UNIQUE REFERENCES food (id)
);

-- version_id: a version of a diet, which is never removed once it is approved.
CREATE TABLE feeding_bowl (
  group_id INTEGER NOT NULL REFERENCES animal_group (id),
  day INTEGER NOT NULL,
  bowl INTEGER NOT NULL,
  meal INTEGER NOT NULL,
  label INTEGER NOT NULL,
  version_id INTEGER,
  animals INTEGER NOT NULL,
  rest_mg INTEGER,
  rest_by INTEGER,
  rest_at INTEGER,
  PRIMARY KEY (group_id, day, bowl),
  CHECK (bowl > 0 AND animals > 0 AND rest_mg >= 0)
) /* clustered */;

-- swap: that took this food out (its item is the swap's) or brought it in.
-- left_kind: 0 weighed, 1 all eaten, 2 not weighed, 3 estimated, 4 spilled, 5 stolen; lost_mg: of the last two.
CREATE TABLE feeding_line (
  group_id INTEGER NOT NULL,
  day INTEGER NOT NULL,
  bowl INTEGER NOT NULL,
  item INTEGER NOT NULL,
  food INTEGER NOT NULL,
  planned_mg INTEGER NOT NULL,
  preparation INTEGER,
  swap INTEGER,
  weighed_mg INTEGER,
  weighed_by INTEGER,
  weighed_at INTEGER,
  left_kind INTEGER,
  left_mg INTEGER,
  lost_mg INTEGER,
  left_by INTEGER,
  left_at INTEGER,
  PRIMARY KEY (group_id, day, bowl, item),
  FOREIGN KEY (group_id, day, bowl) REFERENCES feeding_bowl (group_id, day, bowl),
  CHECK (item > 0 AND planned_mg >= 0 AND weighed_mg >= 0 AND left_mg >= 0 AND lost_mg >= 0),
  CHECK (left_kind BETWEEN 0 AND 5)
) /* clustered */;

-- Entries after the first one. kind: 0 of a weight, 1 of a leftover, 2 of a mixed remainder (item 0). second: made elsewhere where there
-- was one already; it does not count. Otherwise it counts from then on, for the reason given.
CREATE TABLE feeding_correction (
  group_id INTEGER NOT NULL,
  day INTEGER NOT NULL,
  bowl INTEGER NOT NULL,
  item INTEGER NOT NULL,
  kind INTEGER NOT NULL,
  place INTEGER NOT NULL,
  second INTEGER NOT NULL,
  left_kind INTEGER,
  mg INTEGER,
  lost_mg INTEGER,
  by_word INTEGER NOT NULL,
  at INTEGER NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (group_id, day, bowl, item, kind, place),
  FOREIGN KEY (group_id, day, bowl) REFERENCES feeding_bowl (group_id, day, bowl),
  CHECK (kind BETWEEN 0 AND 2 AND mg >= 0 AND lost_mg >= 0),
  CHECK (second = 1 OR reason <> '')
) /* clustered */ /* append-only */;

-- One food of a bowl replaced by others. Grams are of the bowl.
CREATE TABLE swap_made (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  group_code TEXT NOT NULL REFERENCES animal_group (code) ON UPDATE CASCADE,
  day TEXT NOT NULL,
  bowl INTEGER NOT NULL,
  item INTEGER NOT NULL,
  food TEXT NOT NULL,
  why TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL,
  approval TEXT NOT NULL,
  decided_by TEXT NOT NULL,
  decided_at TEXT NOT NULL,
  decision TEXT NOT NULL
);

CREATE INDEX swap_made_of_group ON swap_made (group_code, day);
CREATE INDEX swap_made_of_day ON swap_made (day);

CREATE TABLE swap_given (
  owner_id INTEGER NOT NULL REFERENCES swap_made (id),
  place INTEGER NOT NULL,
  food TEXT NOT NULL,
  grams REAL NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (food <> '' AND grams > 0)
) /* clustered */;

CREATE TABLE control_pan (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  place_name TEXT NOT NULL,
  day TEXT NOT NULL,
  food TEXT NOT NULL,
  food_class TEXT NOT NULL,
  start_g REAL NOT NULL,
  end_g REAL NOT NULL,
  start_at TEXT NOT NULL,
  end_at TEXT NOT NULL,
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  CHECK (start_g > 0 AND end_g >= 0),
  CHECK ((food = '') <> (food_class = ''))
);

CREATE INDEX control_pan_of_day ON control_pan (day);

-- How far a weight may lie from the plan. One row at most; without it the default holds.
CREATE TABLE tolerance_rule (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  of_step REAL NOT NULL,
  least_steps REAL NOT NULL,
  of_bowl REAL NOT NULL,
  of_body REAL NOT NULL,
  CHECK (id = 1 AND of_step >= 0 AND least_steps >= 0 AND of_bowl >= 0 AND of_body >= 0)
);
