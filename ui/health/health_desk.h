// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/health_pages.h"
#include "ui/collection/open_collection.h"

#include <QObject>
#include <QUndoStack>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// Whom the room can show: a group, or one of its animals.
struct HealthPatient {
  transfer::HealthSubject subject{};
  QString name{};
  bool operator==(const HealthPatient&) const = default;
};

/// What the room shows of one of them: everything on one time axis, and what follows from it.
struct HealthView {
  transfer::HealthPeriod period{};
  exchange::CalciumPage page{};
};

/// The health of the collection's animals: reads, works out and writes on the collection's own thread.
class HealthDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  HealthDesk(OpenCollection& collection, Clock today, QObject* parent = nullptr);
  ~HealthDesk() override;

  [[nodiscard]] const std::vector<HealthPatient>& patients() const { return patients_; }
  [[nodiscard]] const std::vector<std::pair<std::string, QString>>& supplements() const {
    return supplements_;
  }
  [[nodiscard]] const std::optional<HealthView>& view() const { return view_; }
  [[nodiscard]] const std::optional<exchange::LookBackPage>& lookBack() const { return lookBack_; }
  [[nodiscard]] std::optional<int> shown() const { return shown_; }
  [[nodiscard]] quantity::Date today() const { return today_(); }
  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }

  /// Reads what is shown, now and whenever something changes; what is out of sight is read later.
  void setInSight(bool inSight);
  void show(int patient);
  /// How many days up to today; where nothing was written down for more than a week, up to the last record.
  void setDays(int days);
  void ask(const transfer::CalciumAsked& asked);
  [[nodiscard]] const transfer::CalciumAsked& asked() const { return asked_; }
  /// From a sign of the period that is shown; nothing where it is none.
  void lookBackFrom(health::SignKind kind, quantity::Date day, int hours);
  void add(health::Observation observation, store::Confirmed confirmed);

 signals:
  void patientsChanged();
  void viewChanged();
  void lookBackChanged();
  /// It must be confirmed before it is written.
  void questioned(const QString& why);
  void kept();

 private:
  void startAnew();
  void refresh();
  void readAnew();
  void readPatients();
  void read();

  OpenCollection& collection_;
  Clock today_;
  QUndoStack undoStack_;
  std::vector<HealthPatient> patients_;
  std::vector<std::pair<std::string, QString>> supplements_;
  std::optional<int> shown_;
  std::optional<HealthView> view_;
  std::optional<exchange::LookBackPage> lookBack_;
  transfer::CalciumAsked asked_{};
  int days_ = 28;
  bool inSight_ = false;
  bool old_ = false;
};

}  // namespace tarebowl::ui
