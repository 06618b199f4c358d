// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"
#include "app/window.h"
#include "core/exchange/problem_json.h"
#include "core/store/store_error.h"

#include <exception>
#include <iostream>
#include <string_view>
#include <variant>

namespace {

using namespace tarebowl::app;

int answer(const Asked& asked, int argc, char** argv, const Streams& streams) {
  if (const auto* command = std::get_if<Run>(&asked)) return (*command)(streams);
  if (const auto* window = std::get_if<OpenWindow>(&asked)) return openWindow(*window, argc, argv, streams);
  streams.out << std::get<ShowText>(asked).text;
  return kDone;
}

int run(int argc, char** argv, const Streams& streams) {
  const int status = answer(parseCommandLine(argc, argv), argc, argv, streams);
  streams.out.flush();
  if (streams.out) return status;
  streams.err << "tarebowl: the result could not be written\n";
  return kInternalFailure;
}

}  // namespace

int main(int argc, char** argv) {
  const Streams streams{std::cin, std::cout, std::cerr};
  const auto complain = [](std::string_view what, int status) {
    std::cerr << "tarebowl: " << what << '\n';
    return status;
  };
  try {
    return run(argc, argv, streams);
  } catch (const tarebowl::exchange::FormatError& error) {
    return complain(error.what(), kUnreadable);
  } catch (const tarebowl::store::StoreError& error) {
    return complain(error.what(), kUnreadable);
  } catch (const UsageError& error) {
    return complain(error.what(), kUnreadable);
  } catch (const std::exception& error) {
    return complain(std::string("internal failure: ") + error.what(), kInternalFailure);
  }
}
