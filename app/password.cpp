// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The one file of the command line that knows what a terminal is on this system.
#include "app/password.h"

#ifdef _WIN32
#include <conio.h>
#else
#include <termios.h>

#include <cstdio>
#include <memory>
#endif

namespace tarebowl::app {

#ifdef _WIN32

std::optional<std::string> typedPassword(const std::string& question) {
  _cputs((question + ": ").c_str());
  std::string typed;
  for (int c = _getch(); c != '\r' && c != '\n'; c = _getch()) {
    if (c == '\b' && !typed.empty())
      typed.pop_back();
    else if (c != '\b')
      typed += static_cast<char>(c);
  }
  _cputs("\r\n");
  return typed.empty() ? std::nullopt : std::optional(typed);
}

#else

namespace {

using Stream = std::unique_ptr<std::FILE, int (*)(std::FILE*)>;

Stream terminal(const char* mode) {
  return {std::fopen("/dev/tty", mode), &std::fclose};
}

/// What is typed does not show, for as long as this lives.
class Hidden {
 public:
  explicit Hidden(int terminal) : terminal_(terminal), works_(tcgetattr(terminal, &before_) == 0) {
    termios quiet = before_;
    quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    if (works_) tcsetattr(terminal_, TCSAFLUSH, &quiet);
  }
  ~Hidden() {
    if (works_) tcsetattr(terminal_, TCSAFLUSH, &before_);
  }
  Hidden(const Hidden&) = delete;
  Hidden& operator=(const Hidden&) = delete;

 private:
  int terminal_;
  termios before_{};
  bool works_;
};

}  // namespace

/// Of the terminal itself: a command's input may be a file.
std::optional<std::string> typedPassword(const std::string& question) {
  const Stream in = terminal("r");
  const Stream out = terminal("w");
  if (!in || !out) return std::nullopt;
  std::fprintf(out.get(), "%s: ", question.c_str());
  std::fflush(out.get());
  std::string typed;
  {
    const Hidden hidden(fileno(in.get()));
    for (int c = std::fgetc(in.get()); c != EOF && c != '\n'; c = std::fgetc(in.get()))
      typed += static_cast<char>(c);
  }
  std::fputs("\n", out.get());
  return typed.empty() ? std::nullopt : std::optional(typed);
}

#endif

}  // namespace tarebowl::app
