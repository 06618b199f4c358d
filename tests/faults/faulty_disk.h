// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <random>
#include <string>
#include <vector>

/// The disk under all collections that are opened while this object lives, which goes wrong when told to. A
/// VFS of SQLite over the system's own (https://www.sqlite.org/vfs.html).
namespace tarebowl::faults {

/// NoRoom: nothing more can be written. ShortWrite: half of what is written arrives. SyncFails: what was
/// written is not kept for sure. ReadFails: what is there cannot be read. PowerOff: nothing works any more.
enum class Fault { None, NoRoom, ShortWrite, SyncFails, ReadFails, PowerOff };

class FaultyDisk {
 public:
  FaultyDisk();
  ~FaultyDisk();
  FaultyDisk(const FaultyDisk&) = delete;
  FaultyDisk& operator=(const FaultyDisk&) = delete;

  /// The fault begins after so many more operations that it concerns, and lasts until mend().
  void breakAfter(Fault fault, int good);
  void mend();
  /// Whether an operation has failed since breakAfter().
  [[nodiscard]] bool hasFailed() const;
  /// What a power cut makes of the disk: of each sector that was written since its file was last synced, the
  /// new or the old content, by chance. Nothing may be open.
  void loseUnsynced(std::mt19937& random);

  struct Inner;

 private:
  std::unique_ptr<Inner> inner_;
};

}  // namespace tarebowl::faults
