// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include "app/adapt_command.h"
#include "app/animal_commands.h"
#include "app/balance_command.h"
#include "app/calcium_command.h"
#include "app/check_command.h"
#include "app/collection_commands.h"
#include "app/comparison_command.h"
#include "app/diet_commands.h"
#include "app/explore_command.h"
#include "app/export_command.h"
#include "app/faeces_command.h"
#include "app/import_command.h"
#include "app/intake_commands.h"
#include "app/kept_rotation_commands.h"
#include "app/look_back_command.h"
#include "app/lots_command.h"
#include "app/move_command.h"
#include "app/nutrients_command.h"
#include "app/observe_command.h"
#include "app/pans_command.h"
#include "app/prep_command.h"
#include "app/rotation_command.h"
#include "app/salvage_command.h"
#include "app/server_command.h"
#include "app/sheet_command.h"
#include "app/solve_command.h"
#include "app/stock_command.h"
#include "app/study_command.h"
#include "app/swap_command.h"
#include "app/target_commands.h"
#include "app/tolerance_command.h"
#include "app/weigh_in_commands.h"
#include "app/zoo_intake_command.h"

namespace tarebowl::app {

void defineCommands(CLI::App& app, Run& chosen) {
  defineSolve(app, chosen);
  defineBalance(app, chosen);
  defineNutrients(app, chosen);
  defineCollections(app, chosen);
  defineSalvage(app, chosen);
  defineServer(app, chosen);
  defineMove(app, chosen);
  defineImport(app, chosen);
  defineExport(app, chosen);
  defineCheck(app, chosen);
  defineAnimals(app, chosen);
  defineTargets(app, chosen);
  defineDiets(app, chosen);
  defineCompare(app, chosen);
  defineSheet(app, chosen);
  definePrep(app, chosen);
  defineWeighIn(app, chosen);
  definePans(app, chosen);
  defineStock(app, chosen);
  defineLots(app, chosen);
  defineTolerance(app, chosen);
  defineSwap(app, chosen);
  defineIntake(app, chosen);
  defineZooIntake(app, chosen);
  definePlanStudy(app, chosen);
  defineFaeces(app, chosen);
  defineRotate(app, chosen);
  defineKeptRotations(app, chosen);
  defineAdapt(app, chosen);
  defineExplore(app, chosen);
  defineCalcium(app, chosen);
  defineLookBack(app, chosen);
  defineObserve(app, chosen);
}

}  // namespace tarebowl::app
