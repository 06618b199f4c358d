// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/faulty_disk.h"

#include <soci/sqlite3/soci-sqlite3.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <new>
#include <stdexcept>

namespace tarebowl::faults {

using namespace sqlite_api;  // the store calls the disk through the types of this namespace

namespace {

namespace fs = std::filesystem;
constexpr std::size_t kSector = 512;

/// What stood where something was written and not yet synced.
struct Overwritten {
  std::uintmax_t offset = 0;
  std::string before{};  ///< shorter than what was written where the file grew
  std::size_t length = 0;
};

}  // namespace

struct FaultyDisk::Inner {
  sqlite3_vfs vfs{};
  sqlite3_vfs* system = nullptr;
  Fault fault = Fault::None;
  int good = 0;
  bool failed = false;
  std::map<fs::path, std::vector<Overwritten>> unsynced{};

  /// Whether this operation, which the fault concerns, is to fail.
  bool failsNow() {
    if (good-- > 0) return false;
    failed = true;
    return true;
  }
  bool failsNow(std::initializer_list<Fault> concerned) {
    return std::ranges::count(concerned, fault) > 0 && failsNow();
  }
};

namespace {

using Inner = FaultyDisk::Inner;

/// What SQLite holds of an open file; the system's own lies behind it in the same block.
struct File {
  sqlite3_file base;
  Inner* disk;
  sqlite3_file* real;
  const char* name;  ///< lives as long as the file is open; null for those without a name
};

File& of(sqlite3_file* file) {
  return *reinterpret_cast<File*>(file);
}

void remember(File& file, int amount, sqlite3_int64 offset) {
  if (file.name == nullptr) return;
  sqlite3_int64 size = 0;
  file.real->pMethods->xFileSize(file.real, &size);
  Overwritten lost{.offset = static_cast<std::uintmax_t>(offset), .length = static_cast<std::size_t>(amount)};
  lost.before.resize(static_cast<std::size_t>(std::clamp<sqlite3_int64>(size - offset, 0, amount)));
  if (!lost.before.empty()) {
    const int there = static_cast<int>(lost.before.size());
    file.real->pMethods->xRead(file.real, lost.before.data(), there, offset);
  }
  file.disk->unsynced[file.name].push_back(std::move(lost));
}

int closeFile(sqlite3_file* file) {
  return of(file).real->pMethods->xClose(of(file).real);
}

int readFile(sqlite3_file* file, void* to, int amount, sqlite3_int64 offset) {
  if (of(file).disk->failsNow({Fault::ReadFails})) return SQLITE_IOERR_READ;
  return of(file).real->pMethods->xRead(of(file).real, to, amount, offset);
}

int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 offset) {
  Inner& disk = *of(file).disk;
  const auto* const methods = of(file).real->pMethods;
  if (disk.failsNow({Fault::NoRoom})) return SQLITE_FULL;
  if (disk.failsNow({Fault::PowerOff})) return SQLITE_IOERR_WRITE;
  remember(of(file), amount, offset);
  if (disk.failsNow({Fault::ShortWrite})) {
    methods->xWrite(of(file).real, from, amount / 2, offset);
    return SQLITE_IOERR_WRITE;
  }
  return methods->xWrite(of(file).real, from, amount, offset);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
  if (of(file).disk->failsNow({Fault::PowerOff})) return SQLITE_IOERR_TRUNCATE;
  return of(file).real->pMethods->xTruncate(of(file).real, size);
}

int syncFile(sqlite3_file* file, int flags) {
  if (of(file).disk->failsNow({Fault::SyncFails, Fault::PowerOff})) return SQLITE_IOERR_FSYNC;
  const int result = of(file).real->pMethods->xSync(of(file).real, flags);
  if (result == SQLITE_OK && of(file).name != nullptr) of(file).disk->unsynced.erase(of(file).name);
  return result;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size) {
  return of(file).real->pMethods->xFileSize(of(file).real, size);
}
int lockFile(sqlite3_file* file, int level) {
  return of(file).real->pMethods->xLock(of(file).real, level);
}
int unlockFile(sqlite3_file* file, int level) {
  return of(file).real->pMethods->xUnlock(of(file).real, level);
}
int checkReservedLock(sqlite3_file* file, int* result) {
  return of(file).real->pMethods->xCheckReservedLock(of(file).real, result);
}
int fileControl(sqlite3_file* file, int operation, void* argument) {
  return of(file).real->pMethods->xFileControl(of(file).real, operation, argument);
}
int sectorSize(sqlite3_file* file) {
  return of(file).real->pMethods->xSectorSize(of(file).real);
}
int deviceCharacteristics(sqlite3_file* file) {
  return of(file).real->pMethods->xDeviceCharacteristics(of(file).real);
}
int shmMap(sqlite3_file* file, int page, int size, int extend, void volatile** at) {
  return of(file).real->pMethods->xShmMap(of(file).real, page, size, extend, at);
}
int shmLock(sqlite3_file* file, int offset, int count, int flags) {
  return of(file).real->pMethods->xShmLock(of(file).real, offset, count, flags);
}
void shmBarrier(sqlite3_file* file) {
  of(file).real->pMethods->xShmBarrier(of(file).real);
}
int shmUnmap(sqlite3_file* file, int remove) {
  return of(file).real->pMethods->xShmUnmap(of(file).real, remove);
}

constexpr sqlite3_io_methods kMethods{2,
                                      closeFile,
                                      readFile,
                                      writeFile,
                                      truncateFile,
                                      syncFile,
                                      fileSize,
                                      lockFile,
                                      unlockFile,
                                      checkReservedLock,
                                      fileControl,
                                      sectorSize,
                                      deviceCharacteristics,
                                      shmMap,
                                      shmLock,
                                      shmBarrier,
                                      shmUnmap,
                                      nullptr,
                                      nullptr};

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* outFlags) {
  auto& disk = *static_cast<Inner*>(vfs->pAppData);
  File& opened = *new (file) File{{nullptr}, &disk, nullptr, name};
  opened.real = reinterpret_cast<sqlite3_file*>(reinterpret_cast<char*>(file) + sizeof(File));
  const int result = disk.system->xOpen(disk.system, name, opened.real, flags, outFlags);
  if (opened.real->pMethods != nullptr) opened.base.pMethods = &kMethods;
  return result;
}

int removeFile(sqlite3_vfs* vfs, const char* name, int syncFolder) {
  auto& disk = *static_cast<Inner*>(vfs->pAppData);
  if (disk.failsNow({Fault::PowerOff})) return SQLITE_IOERR_DELETE;
  disk.unsynced.erase(name);
  return disk.system->xDelete(disk.system, name, syncFolder);
}

/// Sector by sector, the old content or the new.
void undoByChance(std::fstream& stream, const Overwritten& write, std::mt19937& random) {
  std::bernoulli_distribution isLost(0.5);
  for (std::size_t at = 0; at < write.length; at += kSector) {
    if (!isLost(random)) continue;
    std::string before = at < write.before.size() ? write.before.substr(at, kSector) : std::string();
    before.resize(std::min(kSector, write.length - at), '\0');  // where the file grew: a hole
    stream.seekp(static_cast<std::streamoff>(write.offset + at));
    stream.write(before.data(), static_cast<std::streamsize>(before.size()));
  }
}

}  // namespace

FaultyDisk::FaultyDisk() : inner_(std::make_unique<Inner>()) {
  inner_->system = sqlite3_vfs_find(nullptr);
  inner_->vfs = *inner_->system;  // all that is not a file's goes to the system
  inner_->vfs.zName = "tarebowl-faulty";
  inner_->vfs.szOsFile = static_cast<int>(sizeof(File)) + inner_->system->szOsFile;
  inner_->vfs.pAppData = inner_.get();
  inner_->vfs.xOpen = openFile;
  inner_->vfs.xDelete = removeFile;
  if (sqlite3_vfs_register(&inner_->vfs, 1) != SQLITE_OK) throw std::runtime_error("no disk of our own");
}

FaultyDisk::~FaultyDisk() {
  sqlite3_vfs_unregister(&inner_->vfs);
  sqlite3_vfs_register(inner_->system, 1);
}

void FaultyDisk::breakAfter(Fault fault, int good) {
  inner_->fault = fault;
  inner_->good = good;
  inner_->failed = false;
}

void FaultyDisk::mend() {
  inner_->fault = Fault::None;
}

bool FaultyDisk::hasFailed() const {
  return inner_->failed;
}

void FaultyDisk::loseUnsynced(std::mt19937& random) {
  for (auto& [name, writes] : inner_->unsynced) {
    std::fstream stream(name, std::ios::in | std::ios::out | std::ios::binary);
    std::for_each(writes.rbegin(), writes.rend(),
                  [&](const Overwritten& write) { undoByChance(stream, write, random); });
  }
  inner_->unsynced.clear();
}

}  // namespace tarebowl::faults
