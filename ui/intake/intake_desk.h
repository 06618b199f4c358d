// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/intake/intake_view.h"

#include <QObject>
#include <QTimer>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::exchange {
struct IntakeToWrite;
}

namespace tarebowl::ui {

struct IntakeGroup {
  std::string code{};
  QString name{};
  QString section{};
  std::optional<DaySpan> fed{};  ///< from its first bowl to its last; nothing where it has none
  bool operator==(const IntakeGroup&) const = default;
};

/// What the groups of the collection ate: which group, which days are in sight, what is followed. Years are
/// read on the collection's own thread, once a hand rests, and in no more points than a chart has room for.
class IntakeDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  IntakeDesk(OpenCollection& collection, Clock today, QObject* parent = nullptr);

  [[nodiscard]] const std::vector<IntakeGroup>& groups() const { return groups_; }
  [[nodiscard]] const IntakeGroup* group() const;
  [[nodiscard]] const DaySpan& span() const { return span_; }
  /// Nothing before it is read, or where nothing was fed.
  [[nodiscard]] const std::optional<transfer::IntakeTrend>& trend() const { return trend_; }
  [[nodiscard]] const transfer::TrendSubject& subject() const { return subject_; }
  [[nodiscard]] bool isReading() const { return timer_.isActive() || reading_; }

  void show(const std::string& code);
  /// The last so many days with a bowl; 0: all.
  void showLast(int days);
  /// Other days in sight: they are read when the hand rests.
  void look(const DaySpan& span);
  void follow(const transfer::TrendSubject& subject);
  /// Works these days out as a study of its own, with all of its bowls, and gives it to `then`.
  void study(const DaySpan& days, const std::function<void(const exchange::IntakeToWrite&)>& then);
  /// What others write is read while somebody looks; else when somebody looks again.
  void setInSight(bool inSight);

 signals:
  void groupsChanged();
  void spanChanged();
  void trendChanged();

 private:
  void startAnew();
  void refresh();
  void readGroups();
  void read();
  [[nodiscard]] DaySpan within(DaySpan span) const;
  [[nodiscard]] transfer::TrendAsked asked() const;

  OpenCollection& collection_;
  Clock today_;
  QTimer timer_;
  std::vector<IntakeGroup> groups_;
  std::string shown_;
  int lastDays_ = 60;  ///< as chosen; -1: as looked for by hand
  DaySpan span_{};
  transfer::TrendSubject subject_{};
  std::optional<transfer::IntakeTrend> trend_;
  bool reading_ = false;
  bool inSight_ = false;
  bool old_ = false;
};

}  // namespace tarebowl::ui
