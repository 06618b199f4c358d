// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/encoding.h"
#include "core/exchange/table_row.h"

#include <cstdint>
#include <iosfwd>
#include <memory>
#include <optional>
#include <string>

namespace tarebowl::exchange {

/// How a text table parts its cells.
struct TextTableForm {
  std::optional<Encoding> encoding{};  ///< nothing: taken from the bytes
  char delimiter = ',';                ///< one ASCII character
  char quote = '"';                    ///< '\0' where the table quotes nothing
  bool operator==(const TextTableForm&) const = default;
};

/// Comma-, semicolon-, tab-, pipe- or caret-separated text, read with libcsv: quoted cells hold delimiters,
/// line breaks and doubled quotes; lines end with LF, CR LF or CR alone. What is refused, with its place:
/// bytes that are not text, a quote that is not closed or stands inside a cell that is not quoted, a cell or
/// a record beyond all measure.
class TextTableReader : public TableReader {
 public:
  /// name is what messages call the table; size in bytes, 0 where unknown, is for progress only.
  TextTableReader(std::unique_ptr<std::istream> bytes, std::string name, const TextTableForm& form,
                  std::uintmax_t size = 0);
  ~TextTableReader() override;

  [[nodiscard]] bool next(TableRow& row) override;
  [[nodiscard]] double progress() const override;
  /// Nothing while all that was read is ASCII.
  [[nodiscard]] std::optional<Encoding> encoding() const;

 private:
  class Work;
  std::unique_ptr<Work> work_;
};

}  // namespace tarebowl::exchange
