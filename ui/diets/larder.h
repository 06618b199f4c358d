// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <QObject>

#include <memory>
#include <vector>

namespace tarebowl::ui {

class OpenCollection;

/// The foods of the open collection as a diet takes them: what a diet in trouble may be helped by. Read when
/// it is wanted, a little at a time and behind everything else, and read again once the collection has
/// changed.
class Larder : public QObject {
  Q_OBJECT
 public:
  explicit Larder(OpenCollection& collection, QObject* parent = nullptr);

  /// What has been read so far; nothing of a collection that was open before.
  [[nodiscard]] std::shared_ptr<const std::vector<diet::DietFood>> foods() const { return foods_; }
  /// Reads what is not known yet; complete() follows, at once where nothing is.
  void want();

 signals:
  void complete();

 private:
  void forget();
  void readFrom(std::size_t first);

  OpenCollection& collection_;
  std::shared_ptr<const std::vector<diet::DietFood>> foods_;
  std::vector<diet::DietFood> reading_;
  std::shared_ptr<const std::vector<std::string>> codes_;
  int generation_ = 0;  // of the collection's contents: answers of an earlier one are dropped
  bool isReading_ = false;
  bool isOld_ = true;
};

}  // namespace tarebowl::ui
