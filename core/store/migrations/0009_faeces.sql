-- Faeces of a group, gathered over some days (both in it), weighed and analysed: what apparent digestibility is worked out from.
-- dry_matter and its scatter: g per 100 g fresh.
CREATE TABLE faeces_collected (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL,
  group_code TEXT NOT NULL REFERENCES animal_group (code) ON UPDATE CASCADE,
  from_day TEXT NOT NULL,
  until_day TEXT NOT NULL,
  fresh_g REAL NOT NULL,
  dry_matter REAL NOT NULL,
  dry_matter_sd REAL,
  source TEXT NOT NULL,
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  CHECK (from_day <= until_day AND fresh_g > 0 AND dry_matter > 0 AND dry_matter <= 100 AND dry_matter_sd >= 0)
);

CREATE INDEX faeces_collected_of_group ON faeces_collected (group_code, from_day);

-- In the nutrient's own unit per 100 g of dry matter.
CREATE TABLE faeces_value (
  owner_id INTEGER NOT NULL REFERENCES faeces_collected (id),
  place INTEGER NOT NULL,
  nutrient TEXT NOT NULL,
  per_100g_dm REAL NOT NULL,
  sd REAL,
  PRIMARY KEY (owner_id, place),
  CHECK (per_100g_dm >= 0 AND sd >= 0)
) /* clustered */;
