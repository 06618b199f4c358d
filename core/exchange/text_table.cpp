// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/text_table.h"

#include "core/exchange/formula_guard.h"
#include "core/exchange/problem_json.h"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>
#include <istream>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

namespace {

constexpr std::size_t kPiece = std::size_t{1} << 16U;

/// libcsv's parser with its buffers.
class Parser {
 public:
  explicit Parser(const TextTableForm& form) {
    if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) != 0) throw std::bad_alloc();
    csv_set_delim(&parser_, static_cast<unsigned char>(form.delimiter));
    // A zero byte never reaches the parser, so as a quote it quotes nothing.
    csv_set_quote(&parser_, static_cast<unsigned char>(form.quote));
  }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;
  ~Parser() { csv_free(&parser_); }
  csv_parser* operator->() { return &parser_; }
  csv_parser* get() { return &parser_; }

 private:
  csv_parser parser_{};
};

/// What libcsv calls back into: one record.
struct Collected {
  TableRow row;
  bool complete = false;
};

void onCell(void* text, std::size_t length, void* collected) {
  auto& row = static_cast<Collected*>(collected)->row;
  // What is beyond all measure is refused after the piece; until then it is not kept.
  if (row.size() <= kMostColumns && row.bytes() <= kLongestRecord)
    row.add(withoutGuard({static_cast<const char*>(text), length}));
}

void onRecord(int /*terminator*/, void* collected) {
  static_cast<Collected*>(collected)->complete = true;
}

}  // namespace

class TextTableReader::Work {
 public:
  Work(std::unique_ptr<std::istream> bytes, std::string name, const TextTableForm& form, std::uintmax_t size)
      : bytes_(std::move(bytes)),
        name_(std::move(name)),
        form_(form),
        size_(size),
        decoder_(form.encoding),
        parser_(form) {
    collected_.row.begin(1);
  }

  bool next(TableRow& row) {
    while (!ended_) {
      if (at_ == text_.size() && !refill()) {
        finish();
        break;
      }
      feed(upToLineEnd());
      if (collected_.complete && take(row)) return true;
    }
    return collected_.complete && take(row);
  }

  [[nodiscard]] double progress() const {
    if (size_ == 0) return 0.0;
    return std::min(1.0, static_cast<double>(bytesRead_) / static_cast<double>(size_));
  }
  [[nodiscard]] std::optional<Encoding> encoding() const { return decoder_.encoding(); }

 private:
  [[noreturn]] void refuse(std::string expected) const {
    throw FormatError(name_, placeText(line_, collected_.row.size() + 1), std::move(expected));
  }

  /// False for a record without anything in it.
  bool take(TableRow& row) {
    std::swap(row, collected_.row);
    collected_.row.begin(line_);
    collected_.complete = false;
    return row.bytes() > 0;
  }

  /// Decodes until there is text; false at the end. What cannot be decoded is refused when all before it has
  /// been read, so that its place is known.
  bool refill() {
    text_.clear();
    at_ = 0;
    while (text_.empty()) {
      if (!objection_.empty()) refuse(objection_);
      if (inputEnded_) return false;
      piece_.resize(kPiece);
      bytes_->read(piece_.data(), static_cast<std::streamsize>(piece_.size()));
      const auto count = static_cast<std::size_t>(bytes_->gcount());
      if (bytes_->bad()) refuse("a file that can be read to its end");
      bytesRead_ += count;
      inputEnded_ = count < piece_.size();
      if (!decoder_.decode(std::string_view(piece_).substr(0, count), inputEnded_, text_))
        objection_ = decoder_.objection();
      if (const auto zero = text_.find('\0'); zero != std::string::npos) {
        text_.resize(zero);
        objection_ = "text, found a zero byte";
      }
    }
    return true;
  }

  /// From where the reading is to the end of the line, or of the piece.
  std::string_view upToLineEnd() {
    const std::string_view rest = std::string_view(text_).substr(at_);
    const auto* const end =
        std::find_if(rest.begin(), rest.end(), [](char c) { return c == '\n' || c == '\r'; });
    const auto length = static_cast<std::size_t>(end - rest.begin());
    return rest.substr(0, std::min(length + 1, rest.size()));
  }

  void feed(std::string_view part) {
    const std::size_t read =
        csv_parse(parser_.get(), part.data(), part.size(), onCell, onRecord, &collected_);
    if (read != part.size()) {
      if (csv_error(parser_.get()) == CSV_ENOMEM) throw std::bad_alloc();
      refuse(fmt::format("{} only around a whole cell, and doubled inside it", form_.quote));
    }
    checkMeasure();
    at_ += part.size();
    countLine(part);
  }

  void checkMeasure() {
    if (parser_->entry_pos > kLongestCell)
      refuse(fmt::format("a cell of at most {} characters", kLongestCell));
    if (collected_.row.size() > kMostColumns) refuse(fmt::format("at most {} columns", kMostColumns));
    if (collected_.row.bytes() > kLongestRecord)
      refuse(fmt::format("a record of at most {} MB", kLongestRecord >> 20U));
  }

  void countLine(std::string_view part) {
    const char last = part.back();
    // The LF of a CR LF belongs to the line that the CR ended.
    const bool ends = last == '\r' || (last == '\n' && !(afterReturn_ && part.size() == 1));
    afterReturn_ = last == '\r';
    if (ends) ++line_;
    const bool inQuotes = parser_->quoted != 0 && parser_->entry_pos > 0;
    if (!inQuotes) quoteOpenedOn_ = line_;
    if (!collected_.complete && collected_.row.size() == 0 && !inQuotes) collected_.row.begin(line_);
  }

  void finish() {
    ended_ = true;
    if (csv_fini(parser_.get(), onCell, onRecord, &collected_) == 0) return;
    line_ = quoteOpenedOn_;
    refuse(fmt::format("a closing {} for the one that opens here", form_.quote));
  }

  std::unique_ptr<std::istream> bytes_;
  std::string name_;
  TextTableForm form_;
  std::uintmax_t size_;
  std::uintmax_t bytesRead_ = 0;
  TextDecoder decoder_;
  Parser parser_;
  Collected collected_;
  std::string piece_;
  std::string text_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  std::size_t quoteOpenedOn_ = 1;
  std::string objection_;
  bool afterReturn_ = false;
  bool inputEnded_ = false;
  bool ended_ = false;
};

TextTableReader::TextTableReader(std::unique_ptr<std::istream> bytes, std::string name,
                                 const TextTableForm& form, std::uintmax_t size)
    : work_(std::make_unique<Work>(std::move(bytes), std::move(name), form, size)) {}

TextTableReader::~TextTableReader() = default;

bool TextTableReader::next(TableRow& row) {
  return work_->next(row);
}

double TextTableReader::progress() const {
  return work_->progress();
}

std::optional<Encoding> TextTableReader::encoding() const {
  return work_->encoding();
}

}  // namespace tarebowl::exchange
