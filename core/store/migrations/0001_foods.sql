-- Foods, the samples that say what they are made of, and the log of every change.
-- Common SQL; the engine adds what /* clustered */ and /* append-only */ ask for (sqlite_dialect.h).

CREATE TABLE change_log (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  verb TEXT NOT NULL,
  subject TEXT NOT NULL,
  subject_id INTEGER,
  state_before TEXT,
  state_after TEXT,
  CHECK (at <> '' AND verb <> '')
) /* append-only */;

-- What values are stated of: FAO/INFOODS tagnames, and columns of imported tables that have none here.
CREATE TABLE component (
  id INTEGER PRIMARY KEY,
  tagname TEXT NOT NULL UNIQUE,
  unit TEXT NOT NULL
);

CREATE TABLE food (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  form TEXT NOT NULL,
  food_group TEXT NOT NULL,
  unit_mass_g REAL,
  scale_step_g REAL NOT NULL,
  edible_fraction REAL NOT NULL,
  price_per_kg REAL,
  in_stock INTEGER NOT NULL,
  note TEXT NOT NULL,
  invented INTEGER NOT NULL,
  CHECK (code <> '' AND name <> ''),
  CHECK (unit_mass_g > 0 AND scale_step_g > 0 AND price_per_kg >= 0),
  CHECK (edible_fraction > 0 AND edible_fraction <= 1)
);

CREATE TABLE food_caution (
  food_id INTEGER NOT NULL REFERENCES food (id),
  place INTEGER NOT NULL,
  caution TEXT NOT NULL,
  PRIMARY KEY (food_id, place)
) /* clustered */;

-- A value that goes before every sample, and why. Per 100 g as fed, in the component's unit.
CREATE TABLE food_override (
  food_id INTEGER NOT NULL REFERENCES food (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  amount REAL NOT NULL,
  sd REAL,
  reason TEXT NOT NULL,
  PRIMARY KEY (food_id, component_id),
  CHECK (amount >= 0 AND sd >= 0 AND reason <> '')
) /* clustered */;

-- A cooked food is worked out from the raw one: mass_yield is grams cooked per gram raw.
CREATE TABLE food_cooking (
  food_id INTEGER PRIMARY KEY REFERENCES food (id),
  raw_food_id INTEGER NOT NULL REFERENCES food (id),
  mass_yield REAL NOT NULL,
  source TEXT NOT NULL,
  CHECK (mass_yield > 0 AND food_id <> raw_food_id)
);

CREATE INDEX food_cooking_of_raw ON food_cooking (raw_food_id);

CREATE TABLE food_retention (
  food_id INTEGER NOT NULL REFERENCES food (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  factor REAL NOT NULL,
  PRIMARY KEY (food_id, component_id),
  CHECK (factor >= 0)
) /* clustered */;

CREATE TABLE food_plan (
  food_id INTEGER NOT NULL REFERENCES food (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  every_months INTEGER NOT NULL,
  PRIMARY KEY (food_id, component_id),
  CHECK (every_months > 0)
) /* clustered */;

-- source and source_code name a food of an imported table: importing it again finds it.
CREATE TABLE sample (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  food_id INTEGER NOT NULL REFERENCES food (id),
  origin TEXT NOT NULL,
  source TEXT NOT NULL,
  source_code TEXT,
  sampled_on TEXT,
  lab TEXT NOT NULL,
  method TEXT NOT NULL,
  batch TEXT NOT NULL,
  note TEXT NOT NULL,
  excluded TEXT,
  UNIQUE (source, source_code),
  CHECK (origin IN ('own-lab', 'publication', 'label', 'estimate')),
  CHECK (excluded <> '')
);

CREATE INDEX sample_of_food ON sample (food_id);

-- amount is in the component's unit per 100 g as fed (basis 0), per 100 g dry matter (1) or per 1000 kcal (2).
-- qualifier: 0 =, 1 >= guaranteed, 2 <= guaranteed, 3 below quantification, 4 trace, 5 <, 6 >, 7 not detected.
-- reported_*: as it stood in the report, where that differs from what is stored.
CREATE TABLE sample_value (
  sample_id INTEGER NOT NULL REFERENCES sample (id),
  component_id INTEGER NOT NULL REFERENCES component (id),
  amount REAL NOT NULL,
  basis INTEGER NOT NULL,
  qualifier INTEGER NOT NULL,
  sd REAL,
  determinations INTEGER,
  reported_amount REAL,
  reported_unit TEXT,
  reported_per REAL,
  PRIMARY KEY (sample_id, component_id),
  CHECK (amount >= 0 AND basis BETWEEN 0 AND 2 AND qualifier BETWEEN 0 AND 7),
  CHECK (sd >= 0 AND determinations > 0)
) /* clustered */;
