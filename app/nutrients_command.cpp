// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/nutrients_command.h"

#include "app/options.h"
#include "app/result_table.h"
#include "core/exchange/nutrients_json.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

void defineNutrients(CLI::App& app, Run& chosen) {
  const auto table = std::make_shared<bool>(false);
  CLI::App& command =
      *app.add_subcommand("nutrients", "List the nutrients known here, with their tagnames and units");
  addTableOrJson(command, *table);
  runWhenNamed(command, chosen, [table](const Streams& streams) -> int {
    streams.out << (*table ? nutrientTable() : exchange::writeNutrients());
    return kDone;
  });
}

}  // namespace tarebowl::app
