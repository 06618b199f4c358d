// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"

#include <algorithm>
#include <array>
#include <istream>
#include <map>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kHeadBytes = std::size_t{256} * 1024;
constexpr std::size_t kHeadRecords = 200;

/// The head in UTF-8; what cannot be decoded ends it.
std::string headOf(const TableInput& input) {
  const auto stream = input.open();
  std::string bytes(kHeadBytes, '\0');
  stream->read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  bytes.resize(static_cast<std::size_t>(stream->gcount()));
  std::string text;
  TextDecoder decoder;
  if (!decoder.decode(bytes, true, text)) text.resize(std::min(text.size(), kHeadBytes));
  // The last line may be cut off.
  if (bytes.size() == kHeadBytes) text.resize(std::min(text.size(), text.find_last_of("\r\n") + 1));
  return text;
}

/// How alike the records come out by this form: the share of those that have the most common number of cells.
double likenessBy(const TextTableForm& form, const std::string& head) {
  std::map<std::size_t, std::size_t> recordsOfWidth;
  std::size_t records = 0;
  TableRow row;
  try {
    const auto reader = openTable(tableText(head, ""), form);
    while (records < kHeadRecords && reader->next(row)) {
      ++recordsOfWidth[row.size()];
      ++records;
    }
  } catch (const FormatError&) {
    // A broken record speaks against the form; those before it still count.
    ++records;
  }
  recordsOfWidth.erase(1);
  const auto most =
      std::ranges::max_element(recordsOfWidth, {}, [](const auto& entry) { return entry.second; });
  if (most == recordsOfWidth.end()) return 0.0;
  return static_cast<double>(most->second) / static_cast<double>(records);
}

}  // namespace

TextTableForm guessForm(const TableInput& input) {
  TextTableForm best;
  if (!input.spreadsheet.empty()) return best;
  const std::string head = headOf(input);
  // A comma also stands in decimal numbers, so it yields to any mark that parts the records as well.
  constexpr std::array kCandidates{TextTableForm{{}, '\t', '"'}, TextTableForm{{}, ';', '"'},
                                   TextTableForm{{}, '^', '~'},  TextTableForm{{}, '|', '"'},
                                   TextTableForm{{}, ',', '"'},  TextTableForm{{}, '\t', '\0'}};
  constexpr double kAsGood = 0.02;
  double bestLikeness = 0.0;
  for (const TextTableForm& candidate : kCandidates) {
    const double likeness = likenessBy(candidate, head);
    // Where one form parts all records alike, nearly alike is not as good: names may hold the other's mark.
    const bool better = likeness == 1.0 ? bestLikeness < 1.0 : likeness > bestLikeness + kAsGood;
    if (!better) continue;
    best = candidate;
    bestLikeness = likeness;
  }
  return best;
}

}  // namespace tarebowl::exchange
