// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/name_order.h"

#include <algorithm>

namespace tarebowl::animal {
namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

unsigned char folded(char c) {
  return static_cast<unsigned char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

/// The digits that a text begins with, cut off it, without noughts before them.
std::string_view takeNumber(std::string_view& text) {
  std::string_view digits = text.substr(0, text.find_first_not_of("0123456789"));
  text.remove_prefix(digits.size());
  digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
  return digits;
}

/// Below 0, 0 or above 0: numbers by length and then by digits, however long they are.
int compareNumbers(std::string_view a, std::string_view b) {
  if (a.size() != b.size()) return a.size() < b.size() ? -1 : 1;
  return a.compare(b);
}

int compareFolded(std::string_view a, std::string_view b) {
  while (!a.empty() && !b.empty()) {
    if (isDigit(a.front()) && isDigit(b.front())) {
      const std::string_view numberA = takeNumber(a);
      const std::string_view numberB = takeNumber(b);
      if (const int order = compareNumbers(numberA, numberB); order != 0) return order;
      continue;
    }
    if (folded(a.front()) != folded(b.front())) return folded(a.front()) < folded(b.front()) ? -1 : 1;
    a.remove_prefix(1);
    b.remove_prefix(1);
  }
  if (a.empty() == b.empty()) return 0;
  return a.empty() ? -1 : 1;
}

}  // namespace

bool goesBefore(std::string_view a, std::string_view b) {
  const int order = compareFolded(a, b);
  return order != 0 ? order < 0 : a < b;
}

}  // namespace tarebowl::animal
