// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/row_writer.h"

#include "core/exchange/formula_guard.h"
#include "core/exchange/problem_json.h"

#include <csv.h>
#include <fmt/format.h>
#include <xlsxwriter.h>

#include <charconv>
#include <ostream>
#include <utility>

namespace tarebowl::exchange {

namespace {

void writeQuoted(std::ostream& out, const std::string& text) {
  if (text.find_first_of(",\"\r\n;\t|^~ ") == std::string::npos) {
    out << text;
    return;
  }
  std::string quoted(2 * text.size() + 2, '\0');
  quoted.resize(csv_write2(quoted.data(), quoted.size(), text.data(), text.size(), '"'));
  out << quoted;
}

}  // namespace

std::string numberText(double number) {
  return fmt::format("{}", number);
}

void CsvWriter::write(const std::vector<Cell>& row) {
  for (std::size_t c = 0; c < row.size(); ++c) {
    if (c > 0) out_ << ',';
    if (const auto* number = std::get_if<double>(&row[c])) {
      out_ << numberText(*number);
    } else {
      writeQuoted(out_, guarded(std::get<std::string>(row[c])));
    }
  }
  out_ << "\r\n";
}

class XlsxWriter::Book {
 public:
  Book(const std::filesystem::path& file, const std::string& sheet) : name_(file.string()) {
    lxw_workbook_options options{};
    options.constant_memory = LXW_TRUE;
    book_ = workbook_new_opt(name_.c_str(), &options);
    sheet_ = book_ == nullptr ? nullptr : workbook_add_worksheet(book_, sheet.c_str());
    if (sheet_ == nullptr) throw FormatError(name_, "", "a spreadsheet that can be written");
  }
  Book(const Book&) = delete;
  Book& operator=(const Book&) = delete;
  ~Book() {
    if (book_ != nullptr) workbook_close(book_);
  }

  void write(const std::vector<Cell>& row) {
    for (std::size_t c = 0; c < row.size(); ++c) {
      const auto* number = std::get_if<double>(&row[c]);
      const auto error =
          number != nullptr ? writeNumber(c, *number) : writeText(c, std::get<std::string>(row[c]));
      if (error != LXW_NO_ERROR) refuse(error);
    }
    ++line_;
  }

  void fitToPage() {
    worksheet_fit_to_pages(sheet_, 1, 1);
    worksheet_set_paper(sheet_, 9);  // A4
  }

  void close() {
    const auto error = workbook_close(std::exchange(book_, nullptr));
    if (error != LXW_NO_ERROR) refuse(error);
  }

 private:
  [[noreturn]] void refuse(lxw_error error) const {
    throw FormatError(name_, "",
                      std::string("a spreadsheet that can be written, found: ") + lxw_strerror(error));
  }

  /// The library writes 16 digits.
  lxw_error writeNumber(std::size_t column, double number) {
    const std::string written = fmt::format("{:.16G}", number);
    double readBack = 0.0;
    std::from_chars(written.data(), written.data() + written.size(), readBack);
    if (readBack != number) return writeText(column, numberText(number));
    return worksheet_write_number(sheet_, line_, static_cast<lxw_col_t>(column), number, nullptr);
  }

  lxw_error writeText(std::size_t column, const std::string& text) {
    if (text.empty()) return LXW_NO_ERROR;
    return worksheet_write_string(sheet_, line_, static_cast<lxw_col_t>(column), text.c_str(), nullptr);
  }

  std::string name_;
  lxw_workbook* book_ = nullptr;
  lxw_worksheet* sheet_ = nullptr;
  lxw_row_t line_ = 0;
};

XlsxWriter::XlsxWriter(const std::filesystem::path& file, const std::string& sheet)
    : book_(std::make_unique<Book>(file, sheet)) {}

XlsxWriter::~XlsxWriter() = default;

void XlsxWriter::write(const std::vector<Cell>& row) {
  book_->write(row);
}

void XlsxWriter::fitToPage() {
  book_->fitToPage();
}

void XlsxWriter::close() {
  book_->close();
}

}  // namespace tarebowl::exchange
