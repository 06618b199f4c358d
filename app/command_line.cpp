// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include "app/commands.h"

#include <CLI/CLI.hpp>

#include <sstream>

namespace tarebowl::app {

namespace {

struct WindowWords {
  std::string file;
  bool sample = false;
  std::string theme;  // checked here, read by the window itself
};

void defineWindow(CLI::App& app, WindowWords& words) {
  app.set_version_flag("--version", "tarebowl " TAREBOWL_VERSION);
  app.set_help_flag("--help,-h", "Print this help");
  CLI::Option* file = app.add_option("FILE", words.file,
                                     "Open the window on this collection (*.tarebowl) or problem file "
                                     "(default: the collection that was open last)");
  app.add_flag("--sample", words.sample, "Open the window on the invented sample")->excludes(file);
  app.add_option("--theme", words.theme, "Theme of the window, where it is not to follow the desktop")
      ->check(CLI::IsMember({"light", "dark"}));
  app.require_subcommand(0, 1);
  app.footer(
      "Exit status: 0 balanced or compromise, 3 impossible (the hard rules contradict each other),\n"
      "2 a file or a command line that cannot be read, 1 anything else.");
}

/// CLI11 explains some slips over several lines; the first one says it.
std::string firstLine(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

/// Help and version arrive as errors without a fault.
ShowText answerTo(const CLI::App& app, const CLI::ParseError& request) {
  std::ostringstream out;
  std::ostringstream err;
  if (app.exit(request, out, err) != 0)
    throw UsageError(firstLine(request.what()) + " (see tarebowl --help)");
  return {out.str()};
}

}  // namespace

Asked parseCommandLine(int argc, const char* const* argv) {
  CLI::App app("Diets weighed to the gram for animals in human care.", "tarebowl");
  WindowWords window;
  Run chosen;
  defineWindow(app, window);
  defineCommands(app, chosen);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& request) {
    return answerTo(app, request);
  }
  if (chosen) return chosen;
  OpenWindow answer{.sample = window.sample};
  if (!window.file.empty()) answer.file = window.file;
  return answer;
}

}  // namespace tarebowl::app
