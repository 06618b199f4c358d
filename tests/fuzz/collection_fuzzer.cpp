// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_reading.h"
#include "core/store/food_reading.h"
#include "core/store/page_finder.h"
#include "core/store/store_error.h"

#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <span>

namespace {

using namespace tarebowl::store;

/// A file of this process; the engine opens none that lies in memory.
class OwnFile {
 public:
  explicit OwnFile(std::span<const std::uint8_t> content)
      : path_(std::filesystem::temp_directory_path() / ("fuzz-" + std::to_string(::getpid()) + ".tarebowl")) {
    std::ofstream(path_, std::ios::binary)
        .write(reinterpret_cast<const char*>(content.data()), static_cast<std::streamsize>(content.size()));
  }
  ~OwnFile() {
    std::error_code ignored;
    for (const char* tail : {"", "-wal", "-shm", "-journal"})
      std::filesystem::remove(path_.string() + tail, ignored);
  }
  OwnFile(const OwnFile&) = delete;
  OwnFile& operator=(const OwnFile&) = delete;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

void openAndRead(const std::filesystem::path& file) {
  try {
    const Collection collection =
        Collection::open(file, "2026-11-25T07:30:00Z",
                         {.access = OpenOptions::Access::ReadOnly, .check = OpenOptions::Check::Always});
    (void)countFoods(collection);
    (void)listFoods(collection);
    (void)listGroups(collection);
  } catch (const StoreError&) {  // NOLINT(bugprone-empty-catch): said in words
  }
}

/// The reading that salvage rests on: every row that it takes has a value for every column.
void findRows(const std::filesystem::path& file) {
  using Type = SoughtColumn::Type;
  const std::vector<SoughtTable> tables{
      {"component", false, {{"id", Type::Whole, false, true}, {"tagname", Type::Text}, {"unit", Type::Text}}},
      {"food_caution", true, {{"food_id", Type::Whole}, {"place", Type::Whole}, {"caution", Type::Text}}}};
  PageFile pages(file);
  FoundTables found = findTables(pages, tables);
  for (const SoughtTable& table : tables)
    for (const std::uint32_t page : found.tables[table.name].pages)
      for (const FoundRow& row : rowsOn(pages, page, table))
        if (row.values.size() != table.columns.size()) std::abort();
}

}  // namespace

// Whatever a file holds, opening it ends in a collection or in words, and looking for rows ends.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const OwnFile file({data, size});
  openAndRead(file.path());
  findRows(file.path());
  return 0;
}
