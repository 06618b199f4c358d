// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/child_program.h"

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>

namespace tarebowl::store {

namespace {

class Pipe {
 public:
  Pipe() { (void)::pipe2(ends_.data(), O_CLOEXEC); }
  ~Pipe() {
    close(0);
    close(1);
  }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;
  [[nodiscard]] int end(std::size_t which) const { return ends_.at(which); }
  void close(std::size_t which) {
    if (ends_.at(which) >= 0) ::close(ends_.at(which));
    ends_.at(which) = -1;
  }
  /// False once nothing more comes.
  bool readInto(std::string& text) {
    std::array<char, 4096> some{};
    const ssize_t read = ::read(ends_[0], some.data(), some.size());
    if (read > 0) text.append(some.data(), static_cast<std::size_t>(read));
    if (read > 0 || (read < 0 && errno == EINTR)) return true;
    close(0);
    return false;
  }

 private:
  std::array<int, 2> ends_{-1, -1};
};

std::vector<char*> pointersTo(const std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  pointers.reserve(texts.size() + 1);
  for (const std::string& text : texts) pointers.push_back(const_cast<char*>(text.c_str()));
  pointers.push_back(nullptr);
  return pointers;
}

/// Those that are given go before those of the same name that are there.
std::vector<std::string> environmentWith(const std::vector<std::string>& given) {
  std::vector<std::string> all = given;
  all.emplace_back("LC_ALL=C.UTF-8");
  const auto isGiven = [&all](const std::string& text) {
    const std::string name = text.substr(0, text.find('=') + 1);
    for (const std::string& one : all)
      if (one.starts_with(name)) return true;
    return false;
  };
  for (char** text = environ; *text != nullptr; ++text)
    if (!isGiven(*text)) all.emplace_back(*text);
  return all;
}

/// Both at once: a program that waits to be heard on one of them would never end.
void readAll(Pipe& out, Pipe& errors, ChildOutcome& outcome) {
  while (out.end(0) >= 0 || errors.end(0) >= 0) {
    std::array<pollfd, 2> on{{{out.end(0), POLLIN, 0}, {errors.end(0), POLLIN, 0}}};
    if (::poll(on.data(), on.size(), -1) < 0 && errno != EINTR) return;
    if (on[0].revents != 0) (void)out.readInto(outcome.out);
    if (on[1].revents != 0) (void)errors.readInto(outcome.errors);
  }
}

}  // namespace

ChildOutcome runProgram(const std::vector<std::string>& arguments,
                        const std::vector<std::string>& environment) {
  Pipe out;
  Pipe errors;
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
  posix_spawn_file_actions_adddup2(&actions, out.end(1), STDOUT_FILENO);
  posix_spawn_file_actions_adddup2(&actions, errors.end(1), STDERR_FILENO);
  const std::vector<std::string> all = environmentWith(environment);
  pid_t child = -1;
  const int failed = ::posix_spawnp(&child, arguments.front().c_str(), &actions, nullptr,
                                    pointersTo(arguments).data(), pointersTo(all).data());
  posix_spawn_file_actions_destroy(&actions);
  ChildOutcome outcome;
  if (failed != 0) return outcome;
  outcome.wasFound = true;
  out.close(1);
  errors.close(1);
  readAll(out, errors, outcome);
  int status = 0;
  while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
  }
  if (WIFEXITED(status)) outcome.status = WEXITSTATUS(status);
  return outcome;
}

}  // namespace tarebowl::store
