// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// What the commands of health ask beside a group and a day, as it was typed.
struct HealthWords {
  std::string animal;  ///< code of an individual, instead of a group
  std::string from;    ///< days, YYYY-MM-DD
  std::string to;
  std::string supplement;
  double retained = 1.0;
  double eaten = 1.0;
  long long observation = 0;  ///< number of one; 0: none
  std::string sign;           ///< kind of an observation
  int hours = 24;
  std::string scale;  ///< of a score
  double score = 0.0;
  bool scored = false;
  std::string appetite;
  std::vector<std::string> blood;  ///< "calcium 2.4 mmol/l", with the lab's range "… 2.2 3.0"
  std::string time;
  std::string note;
  std::vector<std::string> attachments;
};

/// calcium, look-back and observe. words.scored is known once the line was read: observe's --score was given.
void defineHealthOptions(CLI::App& calcium, CLI::App& lookBack, CLI::App& observe, HealthWords& words);

}  // namespace tarebowl::app
