// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <chrono>
#include <filesystem>
#include <future>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

namespace tarebowl::store {

/// A long way to the tests' server: what it answers arrives later, and how often somebody waited for an
/// answer before they went on is counted.
class SlowWay {
 public:
  /// server: the address at its end, of a server on a socket.
  SlowWay(const std::filesystem::path& server, std::chrono::milliseconds latency);
  ~SlowWay();
  SlowWay(const SlowWay&) = delete;
  SlowWay& operator=(const SlowWay&) = delete;

  /// Nobody comes through until it is mended; whoever is on the way is cut off.
  void breakOff();
  void mend() { broken_ = false; }
  /// The same database, by this way.
  [[nodiscard]] std::filesystem::path address() const { return address_; }
  /// There and back, over all connections. Without what ends a reading: nobody waits for its answer (nor is
  /// it counted where something was written, whose end is waited for).
  [[nodiscard]] int roundTrips() const { return trips_; }
  /// From here on of those connections alone that are there.
  void countNoNewConnections() { countsNew_ = false; }

 private:
  void accept();
  void carry(int near, int far, bool isCounted);
  void closeBoth(int near, int far);

  std::filesystem::path folder_;  ///< of its own, with a short name: a socket's may not be long
  std::filesystem::path server_;  ///< its socket
  std::filesystem::path address_;
  std::chrono::milliseconds latency_;
  int listening_;
  std::atomic<int> trips_{0};
  std::atomic<bool> broken_{false};
  std::atomic<bool> countsNew_{true};
  std::mutex mutex_;
  std::vector<int> open_;                    // guarded by mutex_
  std::vector<std::future<void>> carriers_;  // of accepting_ alone, until it has ended
  std::thread accepting_;                    // last: it uses all of the above
};

}  // namespace tarebowl::store
