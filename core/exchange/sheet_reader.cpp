// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheet_reader.h"

#include "core/exchange/problem_json.h"
#include "core/exchange/sheet_xml.h"
#include "core/exchange/zip_member.h"

#include <fmt/format.h>

#include <deque>
#include <utility>

namespace tarebowl::exchange {

namespace {

/// Reads the sheet's XML piece by piece until a row is complete.
class SheetReader : public TableReader {
 public:
  explicit SheetReader(const std::filesystem::path& file)
      : name_(file.string()),
        book_(readWorkbook(file)),
        sheet_(file, book_.sheetPath),
        parser_(book_, name_) {}

  bool next(TableRow& row) override {
    while (true) {
      while (!parser_.rows().empty()) {
        row = std::move(parser_.rows().front());
        parser_.rows().pop_front();
        if (row.bytes() > 0) return true;
      }
      if (ended_) return false;
      const std::string_view piece = sheet_.read();
      ended_ = piece.empty();
      parser_.feed(piece, ended_);
    }
  }

  [[nodiscard]] double progress() const override { return sheet_.progress(); }

 private:
  std::string name_;
  Workbook book_;
  ZipMember sheet_;
  SheetParser parser_;
  bool ended_ = false;
};

}  // namespace

std::unique_ptr<TableReader> openSheet(const std::filesystem::path& file) {
  return std::make_unique<SheetReader>(file);
}

}  // namespace tarebowl::exchange
