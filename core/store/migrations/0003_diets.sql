-- Diets of the groups and their versions; foods that are mixed from foods.
-- Foods of a diet are named by their codes and need not be there. Grams are per animal and day, as fed.

CREATE TABLE diet (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  group_code TEXT NOT NULL REFERENCES animal_group (code) ON UPDATE CASCADE,
  note TEXT NOT NULL,
  invented INTEGER NOT NULL,
  CHECK (code <> '' AND name <> '')
);

CREATE INDEX diet_of_group ON diet (group_code);

-- profile: "code version" of the targets it is judged by; " 1" where none is named yet.
CREATE TABLE diet_version (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  diet TEXT NOT NULL REFERENCES diet (code) ON UPDATE CASCADE,
  number INTEGER NOT NULL,
  state TEXT NOT NULL,
  made_from INTEGER,
  profile TEXT NOT NULL,
  objective TEXT NOT NULL,
  objective_nutrient TEXT,
  confidence REAL,
  energy_method TEXT NOT NULL,
  whole_steps INTEGER NOT NULL,
  fed_from TEXT,
  phase_in_days INTEGER NOT NULL,
  note TEXT NOT NULL,
  UNIQUE (diet, number),
  CHECK (number > 0 AND made_from > 0 AND phase_in_days >= 0),
  CHECK (state IN ('draft', 'submitted', 'approved', 'retired')),
  CHECK ((state IN ('approved', 'retired')) = (fed_from IS NOT NULL)),
  CHECK (confidence > 0.5 AND confidence < 1)
);

CREATE INDEX diet_version_of_profile ON diet_version (profile);

CREATE TABLE diet_line (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  food TEXT NOT NULL,
  grams REAL NOT NULL,
  least_g REAL NOT NULL,
  most_g REAL,
  locked INTEGER NOT NULL,
  purpose TEXT NOT NULL,
  meal TEXT NOT NULL,
  preparation TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

-- Given without weighing: between low and high.
CREATE TABLE diet_allowance (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  food TEXT NOT NULL,
  low_g REAL NOT NULL,
  high_g REAL NOT NULL,
  purpose TEXT NOT NULL,
  note TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

-- What this diet sets otherwise than its targets do.
CREATE TABLE diet_changed_bound (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  least REAL,
  most REAL,
  reason TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '')
) /* clustered */;

CREATE TABLE diet_share (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  food_group TEXT NOT NULL,
  least REAL,
  most REAL,
  basis TEXT NOT NULL,
  hard INTEGER NOT NULL,
  weight REAL NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '' AND least >= 0 AND least <= most AND most <= 1)
) /* clustered */;

CREATE TABLE diet_choice (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  food_group TEXT NOT NULL,
  at_least INTEGER NOT NULL,
  at_most INTEGER,
  min_each_g REAL NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (food_group <> '' AND at_least >= 0 AND at_least <= at_most AND min_each_g >= 0)
) /* clustered */;

-- Cautions and exclusions that this diet sets aside; food: for that one alone.
CREATE TABLE diet_lifted (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  ban TEXT NOT NULL,
  food TEXT NOT NULL,
  reason TEXT NOT NULL,
  who TEXT NOT NULL,
  on_day TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (ban <> '')
) /* clustered */;

-- What became of a version: by whom, when, why.
CREATE TABLE diet_step (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  state TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

-- What was decided on when a version was approved: the files of its problem and its result. One at most.
CREATE TABLE diet_decided (
  owner_id INTEGER NOT NULL REFERENCES diet_version (id),
  place INTEGER NOT NULL,
  problem TEXT NOT NULL,
  result TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (place = 1 AND problem <> '')
) /* clustered */;

-- A food mixed from foods: mass_yield is grams of it per gram weighed in. Its retentions stand in food_retention.
CREATE TABLE food_recipe (
  food_id INTEGER PRIMARY KEY REFERENCES food (id),
  mass_yield REAL NOT NULL,
  source TEXT NOT NULL,
  CHECK (mass_yield > 0)
);

CREATE TABLE food_recipe_part (
  food_id INTEGER NOT NULL REFERENCES food_recipe (food_id),
  place INTEGER NOT NULL,
  part_food_id INTEGER NOT NULL REFERENCES food (id),
  mass_g REAL NOT NULL,
  PRIMARY KEY (food_id, place),
  CHECK (mass_g > 0 AND food_id <> part_food_id)
) /* clustered */;

CREATE INDEX food_recipe_part_of_food ON food_recipe_part (part_food_id);
