// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/balance_command.h"

#include "app/problem_input.h"
#include "app/result_table.h"
#include "core/diet/judged.h"
#include "core/diet/verification.h"
#include "core/exchange/problem_json.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct BalanceWords {
  ProblemWords problem{};
  bool table = false;
};

int balance(const BalanceWords& words, const Streams& streams) {
  const diet::BalanceProblem problem = readProblemFile(words.problem, streams);
  const diet::DietSolution judged = diet::judged(problem, diet::referenceDiet(problem));
  streams.out << (words.table ? judgementTable(problem, judged) : exchange::writeResult(problem, judged));
  return kDone;
}

}  // namespace

void defineBalance(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<BalanceWords>();
  CLI::App& command =
      *app.add_subcommand("balance", "Judge the diet as it is now (\"reference\") without solving");
  command
      .add_option("FILE", words->problem.file, "A problem file (tarebowl-problem/1), or - for standard input")
      ->required();
  addCollection(command, words->problem.collection);
  addTable(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return balance(*words, streams); });
}

}  // namespace tarebowl::app
