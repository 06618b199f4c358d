// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_text.h"

#include <soci/postgresql/soci-postgresql.h>

#include <array>
#include <charconv>
#include <cmath>

namespace tarebowl::store {

namespace {

constexpr std::size_t kLongestNumber = 40;

template <class Number>
std::string shortest(Number value) {
  std::array<char, kLongestNumber> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.data(), end};
}

}  // namespace

std::string serverText(long long value) {
  return shortest(value);
}

std::optional<std::string> serverText(double value) {
  if (std::isnan(value)) return std::nullopt;
  return shortest(value);
}

void refuseUnkept(const std::string& text) {
  if (text.find('\0') != std::string::npos)
    throw soci::postgresql_soci_error("ERROR: a text holds the character 0, which the server does not keep",
                                      "22021");
}

}  // namespace tarebowl::store
