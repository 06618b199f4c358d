// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/reference_data.h"

#include "tests/source_dir.h"

#include <csv.h>
#include <zlib.h>

#include <array>
#include <charconv>
#include <cstdlib>
#include <memory>
#include <stdexcept>

namespace tarebowl::reference {

namespace fs = std::filesystem;

namespace {

fs::path referenceFolder() {
  if (const char* chosen = std::getenv("TAREBOWL_REFERENCE_DIR")) return chosen;
  return fs::path(TAREBOWL_SOURCE_DIR) / ".." / "shared" / "reference";
}

/// Collects libcsv's fields into records; the first record is the header.
struct Reader {
  const std::function<void(const CsvRow&)>& callback;
  std::map<std::string, std::size_t, std::less<>> columns;
  std::vector<std::string> fields;
  std::size_t used = 0;
  std::exception_ptr error;

  void field(const char* text, std::size_t length) {
    if (used == fields.size()) fields.emplace_back();
    fields[used++].assign(text, length);
  }
  void record() {
    fields.resize(used);
    used = 0;
    if (columns.empty()) {
      for (std::size_t i = 0; i < fields.size(); ++i) columns.emplace(fields[i], i);
    } else if (!error) {
      try {
        callback(CsvRow(columns, fields));
      } catch (...) {  // must not pass through the C library
        error = std::current_exception();
      }
    }
  }
};

void onField(void* text, std::size_t length, void* reader) {
  static_cast<Reader*>(reader)->field(static_cast<const char*>(text), length);
}
void onRecord(int, void* reader) {
  static_cast<Reader*>(reader)->record();
}

}  // namespace

std::optional<fs::path> referenceFile(std::string_view name) {
  const fs::path file = referenceFolder() / name;
  return fs::exists(file) ? std::optional(file) : std::nullopt;
}

std::string missingNote(std::string_view name) {
  return "no published table at " + (referenceFolder() / name).lexically_normal().string() +
         "; set TAREBOWL_REFERENCE_DIR to check against it";
}

const std::string& CsvRow::at(std::string_view column) const {
  static const std::string kEmpty;
  const auto place = columns_.find(column);
  if (place == columns_.end()) throw std::out_of_range("no column " + std::string(column));
  return place->second < fields_.size() ? fields_[place->second] : kEmpty;
}

std::optional<double> CsvRow::number(std::string_view column) const {
  const std::string& text = at(column);
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

void forEachRow(const fs::path& csv, const std::function<void(const CsvRow&)>& callback) {
  const std::unique_ptr<gzFile_s, int (*)(gzFile)> file(gzopen(csv.string().c_str(), "rb"), gzclose);
  csv_parser parser{};
  if (!file || csv_init(&parser, CSV_APPEND_NULL) != 0)
    throw std::runtime_error("cannot open " + csv.string());
  const std::unique_ptr<csv_parser, void (*)(csv_parser*)> release(&parser, csv_free);
  Reader reader{callback, {}, {}, 0, {}};
  std::array<char, 1 << 16> buffer{};
  int count = 0;
  while ((count = gzread(file.get(), buffer.data(), buffer.size())) > 0) {
    const auto length = static_cast<std::size_t>(count);
    if (csv_parse(&parser, buffer.data(), length, onField, onRecord, &reader) != length)
      throw std::runtime_error(csv_strerror(csv_error(&parser)));
  }
  if (count < 0) throw std::runtime_error("cannot unpack " + csv.string());
  csv_fini(&parser, onField, onRecord, &reader);
  if (reader.error) std::rethrow_exception(reader.error);
}

std::string unpacked(const fs::path& path) {
  const std::unique_ptr<gzFile_s, int (*)(gzFile)> file(gzopen(path.string().c_str(), "rb"), gzclose);
  if (!file) throw std::runtime_error("cannot open " + path.string());
  std::string text;
  std::array<char, 1 << 16> buffer{};
  int count = 0;
  while ((count = gzread(file.get(), buffer.data(), buffer.size())) > 0)
    text.append(buffer.data(), static_cast<std::size_t>(count));
  if (count < 0) throw std::runtime_error("cannot unpack " + path.string());
  return text;
}

}  // namespace tarebowl::reference
