-- Species, animals and the groups that share a bowl; weighings and condition; target profiles, energy plans, cautions of the house.
-- Days are ISO text. Codes are the house's own names: what refers to one follows when it is renamed.
-- Lists of a thing (stages, counts, targets …) stand in tables of their own, in the order of `place`.

CREATE INDEX change_log_of_subject ON change_log (subject, subject_id);

CREATE TABLE species (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  scientific_name TEXT NOT NULL,
  feeding_type TEXT NOT NULL,
  note TEXT NOT NULL,
  invented INTEGER NOT NULL,
  CHECK (code <> '' AND name <> '')
);

CREATE TABLE species_taxon (
  owner_id INTEGER NOT NULL REFERENCES species (id),
  place INTEGER NOT NULL,
  word TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

-- left_on: the first day on which it is not there any more.
CREATE TABLE individual (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  species TEXT NOT NULL REFERENCES species (code) ON UPDATE CASCADE,
  sex TEXT NOT NULL,
  born TEXT,
  birth_estimated INTEGER NOT NULL,
  arrived TEXT,
  left_on TEXT,
  died INTEGER NOT NULL,
  note TEXT NOT NULL,
  invented INTEGER NOT NULL,
  CHECK (code <> ''),
  CHECK (born <= left_on AND arrived <= left_on AND born <= arrived)
);

CREATE INDEX individual_of_species ON individual (species);

CREATE TABLE individual_stage (
  owner_id INTEGER NOT NULL REFERENCES individual (id),
  place INTEGER NOT NULL,
  from_day TEXT NOT NULL,
  stage TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

-- profile: the code of the target profile it is fed by; empty where none is chosen.
CREATE TABLE animal_group (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  species TEXT NOT NULL REFERENCES species (code) ON UPDATE CASCADE,
  section TEXT NOT NULL,
  profile TEXT NOT NULL,
  note TEXT NOT NULL,
  invented INTEGER NOT NULL,
  CHECK (code <> '' AND name <> '')
);

CREATE INDEX animal_group_of_species ON animal_group (species);

CREATE TABLE group_count (
  owner_id INTEGER NOT NULL REFERENCES animal_group (id),
  place INTEGER NOT NULL,
  from_day TEXT NOT NULL,
  animals INTEGER NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (animals >= 0)
) /* clustered */;

-- From one day until, not including, another; an animal is in one group at a time.
CREATE TABLE membership (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  group_code TEXT NOT NULL REFERENCES animal_group (code) ON UPDATE CASCADE,
  individual TEXT NOT NULL REFERENCES individual (code) ON UPDATE CASCADE,
  from_day TEXT NOT NULL,
  until_day TEXT,
  CHECK (from_day < until_day)
);

CREATE INDEX membership_of_group ON membership (group_code);
CREATE INDEX membership_of_individual ON membership (individual);

-- Of one animal, or the mean of a group.
CREATE TABLE mass_reading (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  individual TEXT REFERENCES individual (code) ON UPDATE CASCADE,
  group_code TEXT REFERENCES animal_group (code) ON UPDATE CASCADE,
  on_day TEXT NOT NULL,
  mass_kg REAL NOT NULL,
  method TEXT NOT NULL,
  note TEXT NOT NULL,
  excluded TEXT,
  CHECK ((individual IS NULL) <> (group_code IS NULL)),
  CHECK (mass_kg > 0 AND excluded <> '')
);

-- As it was written down before it was put right, and why it was.
CREATE TABLE mass_former (
  owner_id INTEGER NOT NULL REFERENCES mass_reading (id),
  place INTEGER NOT NULL,
  on_day TEXT NOT NULL,
  mass_kg REAL NOT NULL,
  correction TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (correction <> '')
) /* clustered */;

CREATE INDEX mass_reading_of_individual ON mass_reading (individual, on_day);
CREATE INDEX mass_reading_of_group ON mass_reading (group_code, on_day);

CREATE TABLE condition_reading (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  individual TEXT REFERENCES individual (code) ON UPDATE CASCADE,
  group_code TEXT REFERENCES animal_group (code) ON UPDATE CASCADE,
  on_day TEXT NOT NULL,
  scale TEXT NOT NULL,
  score REAL NOT NULL,
  note TEXT NOT NULL,
  CHECK ((individual IS NULL) <> (group_code IS NULL)),
  CHECK (scale <> '')
);

CREATE INDEX condition_reading_of_individual ON condition_reading (individual, on_day);
CREATE INDEX condition_reading_of_group ON condition_reading (group_code, on_day);

-- One version of a profile. parent: "code version". A version without a step is a draft.
CREATE TABLE target_profile (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL,
  version INTEGER NOT NULL,
  name TEXT NOT NULL,
  parent TEXT,
  model_species TEXT NOT NULL,
  why_model TEXT NOT NULL,
  life_stage TEXT NOT NULL,
  kcal_per_g_dm REAL,
  dm_fraction REAL,
  note TEXT NOT NULL,
  starter INTEGER NOT NULL,
  invented INTEGER NOT NULL,
  UNIQUE (code, version),
  CHECK (code <> '' AND name <> '' AND version > 0),
  CHECK (kcal_per_g_dm > 0 AND dm_fraction > 0 AND dm_fraction <= 1)
);

CREATE INDEX target_profile_of_parent ON target_profile (parent);

-- lifted: who, which day and why, a line each, where a safe upper limit is not hard.
CREATE TABLE profile_target (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  nutrient TEXT NOT NULL,
  least REAL,
  most REAL,
  unit TEXT NOT NULL,
  basis TEXT NOT NULL,
  hard INTEGER NOT NULL,
  weight REAL NOT NULL,
  preferred REAL,
  safe_upper_limit INTEGER NOT NULL,
  lifted TEXT,
  note TEXT NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '' AND least >= 0 AND least <= most)
) /* clustered */;

CREATE TABLE profile_ratio (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  nutrient TEXT NOT NULL,
  to_nutrient TEXT NOT NULL,
  least REAL,
  most REAL,
  hard INTEGER NOT NULL,
  weight REAL NOT NULL,
  preferred REAL,
  note TEXT NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '' AND least >= 0 AND least <= most)
) /* clustered */;

CREATE TABLE profile_share (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
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

CREATE TABLE profile_choice (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  food_group TEXT NOT NULL,
  at_least INTEGER NOT NULL,
  at_most INTEGER,
  min_each_g REAL NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (food_group <> '' AND at_least >= 0 AND at_least <= at_most AND min_each_g >= 0)
) /* clustered */;

CREATE TABLE profile_exclusion (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  food_group TEXT NOT NULL,
  food TEXT NOT NULL,
  reason TEXT NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '' AND (food_group = '') <> (food = ''))
) /* clustered */;

-- What is not taken over from the parent.
CREATE TABLE profile_dropped (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  rule TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (rule <> '' AND reason <> '')
) /* clustered */;

-- What became of a version: put in force, retired; from which day, by whom, when, why.
CREATE TABLE profile_step (
  owner_id INTEGER NOT NULL REFERENCES target_profile (id),
  place INTEGER NOT NULL,
  step TEXT NOT NULL,
  from_day TEXT NOT NULL,
  who TEXT NOT NULL,
  at TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (reason <> '')
) /* clustered */;

-- How the energy need of a group is worked out from a day on, until the next plan. coefficient: kcal per day at 1 kg.
CREATE TABLE energy_plan (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  group_code TEXT NOT NULL REFERENCES animal_group (code) ON UPDATE CASCADE,
  from_day TEXT NOT NULL,
  animals TEXT NOT NULL,
  level TEXT NOT NULL,
  coefficient REAL NOT NULL,
  exponent REAL NOT NULL,
  validity TEXT NOT NULL,
  lightest_kg REAL,
  heaviest_kg REAL,
  follows_temperature INTEGER NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  note TEXT NOT NULL,
  UNIQUE (group_code, from_day),
  CHECK (coefficient > 0 AND exponent > 0 AND exponent <= 1.5),
  CHECK (lightest_kg > 0 AND lightest_kg <= heaviest_kg)
);

CREATE TABLE energy_factor (
  owner_id INTEGER NOT NULL REFERENCES energy_plan (id),
  place INTEGER NOT NULL,
  kind TEXT NOT NULL,
  words TEXT NOT NULL,
  low REAL NOT NULL,
  high REAL NOT NULL,
  of_level TEXT,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  PRIMARY KEY (owner_id, place),
  CHECK (low > 0 AND low <= high)
) /* clustered */;

CREATE TABLE house_caution (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  severity TEXT NOT NULL,
  reason TEXT NOT NULL,
  advice TEXT NOT NULL,
  source TEXT NOT NULL,
  provenance TEXT NOT NULL,
  origin_species TEXT NOT NULL,
  CHECK (code <> '' AND reason <> '')
);

-- What a caution looks at: words in a food's name, food groups, forms; and the taxa it concerns.
CREATE TABLE caution_word (
  owner_id INTEGER NOT NULL REFERENCES house_caution (id),
  place INTEGER NOT NULL,
  word TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

CREATE TABLE caution_group (
  owner_id INTEGER NOT NULL REFERENCES house_caution (id),
  place INTEGER NOT NULL,
  word TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

CREATE TABLE caution_form (
  owner_id INTEGER NOT NULL REFERENCES house_caution (id),
  place INTEGER NOT NULL,
  word TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;

CREATE TABLE caution_taxon (
  owner_id INTEGER NOT NULL REFERENCES house_caution (id),
  place INTEGER NOT NULL,
  word TEXT NOT NULL,
  PRIMARY KEY (owner_id, place)
) /* clustered */;
