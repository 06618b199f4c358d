// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTemporaryDir>

#include <string_view>

namespace tarebowl::ui {

/// A scale at the other end of a pseudo-terminal. It keeps its name when it is unplugged and plugged in
/// again.
class PretendScale {
 public:
  PretendScale();
  ~PretendScale();
  PretendScale(const PretendScale&) = delete;
  PretendScale& operator=(const PretendScale&) = delete;

  [[nodiscard]] QString port() const;
  void send(std::string_view bytes) const;
  void unplug();
  void plugIn();

 private:
  QTemporaryDir folder_;
  int far_ = -1;
};

}  // namespace tarebowl::ui
