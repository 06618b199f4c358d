-- Who may do what with a collection on a server, whatever program they do it with. Run after the schema was made or
-- raised, as often as one likes. People are login roles that are in one of these:
--
--   tarebowl_reader        reads
--   tarebowl_keeper        weighs in and out, swaps, weighs animals, notes what is seen
--   tarebowl_vet           animals, masses, observations and blood, faeces
--   tarebowl_nutritionist  foods and lab values, targets, diets and their approval, rotations, all that the kitchen does
--   tarebowl_curator       animals and groups, decisions on diets and swaps

DO $$
DECLARE
  wanted TEXT;
BEGIN
  FOREACH wanted IN ARRAY ARRAY['reader', 'keeper', 'vet', 'nutritionist', 'curator'] LOOP
    IF NOT EXISTS (SELECT FROM pg_catalog.pg_roles WHERE rolname = 'tarebowl_' || wanted) THEN
      BEGIN
        EXECUTE format('CREATE ROLE %I NOLOGIN', 'tarebowl_' || wanted);
      EXCEPTION WHEN duplicate_object OR unique_violation THEN
        NULL;  -- another collection of this server is being made at this moment
      END;
    END IF;
  END LOOP;
END $$;

REVOKE ALL ON SCHEMA tarebowl FROM PUBLIC;
REVOKE ALL ON ALL TABLES IN SCHEMA tarebowl FROM PUBLIC, tarebowl_reader, tarebowl_keeper, tarebowl_vet,
  tarebowl_nutritionist, tarebowl_curator;
GRANT USAGE ON SCHEMA tarebowl TO tarebowl_reader, tarebowl_keeper, tarebowl_vet, tarebowl_nutritionist, tarebowl_curator;
GRANT SELECT ON ALL TABLES IN SCHEMA tarebowl TO tarebowl_reader, tarebowl_keeper, tarebowl_vet, tarebowl_nutritionist,
  tarebowl_curator;

-- The log: everybody who writes adds to it, nobody changes it.
GRANT INSERT ON change_log TO tarebowl_keeper, tarebowl_vet, tarebowl_nutritionist, tarebowl_curator;

-- Foods, and what laboratories found in them.
GRANT INSERT, UPDATE, DELETE ON component, food, food_caution, food_override, food_cooking, food_retention, food_plan,
  food_recipe, food_recipe_part, sample, sample_value TO tarebowl_nutritionist;
GRANT INSERT, UPDATE, DELETE ON food_lot TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;

-- Animals and groups.
GRANT INSERT, UPDATE, DELETE ON species, species_taxon, individual, individual_stage, animal_group, group_count, membership
  TO tarebowl_nutritionist, tarebowl_vet, tarebowl_curator;
GRANT INSERT, UPDATE, DELETE ON mass_reading, mass_former, condition_reading
  TO tarebowl_nutritionist, tarebowl_vet, tarebowl_curator, tarebowl_keeper;

-- What they are to get.
GRANT INSERT, UPDATE, DELETE ON target_profile, profile_target, profile_ratio, profile_share, profile_choice,
  profile_exclusion, profile_dropped, profile_step, energy_plan, energy_factor, house_caution, caution_word, caution_group,
  caution_form, caution_taxon TO tarebowl_nutritionist;
GRANT INSERT, UPDATE, DELETE ON diet, diet_version, diet_line, diet_allowance, diet_changed_bound, diet_share, diet_choice,
  diet_lifted, diet_step, diet_decided TO tarebowl_nutritionist, tarebowl_curator;
GRANT INSERT, UPDATE, DELETE ON rotation, rotation_cell TO tarebowl_nutritionist;

-- The kitchen.
GRANT INSERT ON feeding_word, fed_food, feeding_bowl, feeding_correction
  TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT UPDATE (rest_mg, rest_by, rest_at) ON feeding_bowl TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT INSERT, DELETE ON feeding_line TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT UPDATE (swap, weighed_mg, weighed_by, weighed_at, left_kind, left_mg, lost_mg, left_by, left_at) ON feeding_line
  TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT INSERT, DELETE ON swap_made, swap_given TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT UPDATE ON swap_made, swap_given TO tarebowl_nutritionist, tarebowl_curator;
GRANT INSERT, UPDATE, DELETE ON control_pan TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;
GRANT INSERT, UPDATE, DELETE ON tolerance_rule TO tarebowl_nutritionist, tarebowl_curator;

-- Of desks that were cut off: what was taken of them, so that it is taken once. (What waits stands in files of theirs.)
GRANT INSERT ON station_sent TO tarebowl_nutritionist, tarebowl_curator, tarebowl_keeper;

-- Health.
GRANT INSERT, UPDATE, DELETE ON observation, observation_score, observation_blood, observation_file
  TO tarebowl_nutritionist, tarebowl_vet, tarebowl_curator, tarebowl_keeper;
GRANT INSERT, UPDATE, DELETE ON faeces_collected, faeces_value TO tarebowl_nutritionist, tarebowl_vet;

-- Rules for single rows ----------------------------------------------------------------------------------------------

-- Each function finds what is the server's own and what it names with its schema, and nothing that a person may have put
-- in the way.
CREATE OR REPLACE FUNCTION holds_role(VARIADIC wanted TEXT[]) RETURNS BOOLEAN LANGUAGE sql STABLE
  SET search_path = pg_catalog, pg_temp AS $$
  SELECT bool_or(pg_has_role(current_user, 'tarebowl_' || role, 'USAGE')) FROM unnest(wanted) AS role
$$;

-- A keeper asks for a swap; whether a rule may be set aside for it is decided by somebody else, and then it stays.
CREATE OR REPLACE FUNCTION refuse_deciding() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (CASE TG_OP WHEN 'DELETE' THEN OLD.approval ELSE NEW.approval END) IN ('approved', 'refused')
      AND NOT tarebowl.holds_role('nutritionist', 'curator') THEN
    RAISE EXCEPTION 'a swap is decided on by a nutritionist or a curator' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE OR REPLACE TRIGGER swap_made_is_decided BEFORE INSERT OR UPDATE OR DELETE ON swap_made FOR EACH ROW
  EXECUTE FUNCTION refuse_deciding();

-- Blood is the vet's.
CREATE OR REPLACE FUNCTION refuse_blood() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF NOT tarebowl.holds_role('vet', 'nutritionist', 'curator') THEN
    RAISE EXCEPTION 'blood values are written by a vet' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE OR REPLACE TRIGGER observation_blood_is_the_vets BEFORE INSERT OR UPDATE OR DELETE ON observation_blood
  FOR EACH ROW EXECUTE FUNCTION refuse_blood();

-- A keeper's entries in the log are of what keepers do: nobody reads there that a diet was approved which was not.
ALTER TABLE change_log ENABLE ROW LEVEL SECURITY;
DROP POLICY IF EXISTS everybody_reads ON change_log;
DROP POLICY IF EXISTS notes ON change_log;
DROP POLICY IF EXISTS notes_own_work ON change_log;
CREATE POLICY everybody_reads ON change_log FOR SELECT USING (true);
CREATE POLICY notes ON change_log FOR INSERT TO tarebowl_nutritionist, tarebowl_vet, tarebowl_curator WITH CHECK (true);
CREATE POLICY notes_own_work ON change_log FOR INSERT TO tarebowl_keeper
  WITH CHECK (subject IN ('feeding', 'swap', 'control pan', 'mass', 'condition', 'observation', 'lot'));

-- What was weighed first is never written over, by nobody: what goes before it is a correction with a reason.
CREATE OR REPLACE FUNCTION refuse_writing_over() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF TG_TABLE_NAME = 'feeding_bowl' THEN
    IF OLD.rest_mg IS NOT NULL AND (NEW.rest_mg, NEW.rest_by, NEW.rest_at) IS DISTINCT FROM
        (OLD.rest_mg, OLD.rest_by, OLD.rest_at) THEN
      RAISE EXCEPTION 'a remainder that was written down stays; correct it' USING ERRCODE = 'restrict_violation';
    END IF;
    RETURN NEW;
  END IF;
  IF OLD.weighed_mg IS NOT NULL AND (NEW.weighed_mg, NEW.weighed_by, NEW.weighed_at) IS DISTINCT FROM
      (OLD.weighed_mg, OLD.weighed_by, OLD.weighed_at) THEN
    RAISE EXCEPTION 'a weight that was written down stays; correct it' USING ERRCODE = 'restrict_violation';
  END IF;
  IF OLD.left_kind IS NOT NULL AND (NEW.left_kind, NEW.left_mg, NEW.lost_mg, NEW.left_by, NEW.left_at) IS DISTINCT FROM
      (OLD.left_kind, OLD.left_mg, OLD.lost_mg, OLD.left_by, OLD.left_at) THEN
    RAISE EXCEPTION 'a leftover that was written down stays; correct it' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END $$;
CREATE OR REPLACE TRIGGER feeding_bowl_stays BEFORE UPDATE ON feeding_bowl FOR EACH ROW
  EXECUTE FUNCTION refuse_writing_over();
CREATE OR REPLACE TRIGGER feeding_line_stays BEFORE UPDATE ON feeding_line FOR EACH ROW
  EXECUTE FUNCTION refuse_writing_over();

-- A line that was weighed in is in a bowl: it is not taken off the sheet.
CREATE OR REPLACE FUNCTION refuse_taking_off() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF OLD.weighed_mg IS NOT NULL OR OLD.left_kind IS NOT NULL THEN
    RAISE EXCEPTION 'what was weighed in stays on the sheet' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN OLD;
END $$;
CREATE OR REPLACE TRIGGER feeding_line_keeps BEFORE DELETE ON feeding_line FOR EACH ROW EXECUTE FUNCTION refuse_taking_off();

-- What was approved never changes, by nobody: it is retired, and another version is made. (diet_step and diet_decided say
-- what became of it and why.)
CREATE OR REPLACE FUNCTION refuse_changing_approved() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF OLD.state IN ('approved', 'retired') AND (NEW.state NOT IN ('approved', 'retired') OR
      (NEW.number, NEW.made_from, NEW.profile, NEW.objective, NEW.objective_nutrient, NEW.confidence, NEW.energy_method,
       NEW.whole_steps, NEW.fed_from, NEW.phase_in_days) IS DISTINCT FROM
      (OLD.number, OLD.made_from, OLD.profile, OLD.objective, OLD.objective_nutrient, OLD.confidence, OLD.energy_method,
       OLD.whole_steps, OLD.fed_from, OLD.phase_in_days)) THEN
    RAISE EXCEPTION 'a version that was approved stays: retire it, and make a new one' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END $$;
CREATE OR REPLACE TRIGGER diet_version_stays BEFORE UPDATE ON diet_version FOR EACH ROW
  EXECUTE FUNCTION refuse_changing_approved();

CREATE OR REPLACE FUNCTION refuse_changing_part_of_approved() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF EXISTS (SELECT FROM tarebowl.diet_version WHERE id = OLD.owner_id AND state IN ('approved', 'retired')) THEN
    RAISE EXCEPTION 'a version that was approved stays: retire it, and make a new one' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE OR REPLACE FUNCTION refuse_adding_to_approved() RETURNS TRIGGER LANGUAGE plpgsql
  SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF EXISTS (SELECT FROM tarebowl.diet_decided WHERE owner_id = NEW.owner_id) THEN
    RAISE EXCEPTION 'a version that was approved stays: retire it, and make a new one' USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END $$;
DO $$
DECLARE
  part TEXT;
BEGIN
  FOREACH part IN ARRAY ARRAY['diet_line', 'diet_allowance', 'diet_changed_bound', 'diet_share', 'diet_choice', 'diet_lifted']
  LOOP
    EXECUTE format('CREATE OR REPLACE TRIGGER %I BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION '
                   'refuse_changing_part_of_approved()', part || '_stays', part);
    EXECUTE format('CREATE OR REPLACE TRIGGER %I BEFORE INSERT ON %I FOR EACH ROW EXECUTE FUNCTION '
                   'refuse_adding_to_approved()', part || '_closed', part);
  END LOOP;
END $$;
