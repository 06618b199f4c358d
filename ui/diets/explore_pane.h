// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/trace_text.h"
#include "ui/shared/errand.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

class DietDesk;
class TraceChart;

/// "What if": a bound or a limit moves over a range, or what is sought is traded for something else, and the
/// chart shows what has to give. What is read there can be tried. Follows the desk while it is in sight.
class ExplorePane : public QWidget {
  Q_OBJECT
 public:
  explicit ExplorePane(DietDesk& desk, QWidget* parent = nullptr);

  void exploreRung(RungRef rung);
  void exploreFood(std::size_t food);
  [[nodiscard]] const std::optional<diet::Trace>& trace() const { return trace_; }
  [[nodiscard]] bool isTracing() const { return errand_.isBusy(); }
  [[nodiscard]] TraceChart& chart() const { return *chart_; }
  [[nodiscard]] std::optional<TraceSubject> subject() const;

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void build();
  [[nodiscard]] QWidget* makeWords();
  void fillSubjects();
  void choose(const TraceSubject& subject);
  void begin(bool fresh);
  [[nodiscard]] std::optional<diet::TraceRange> typedRange() const;
  void take(const TraceSubject& subject, diet::TraceRange range, diet::Trace trace);
  void showReading(double at);
  void tryReading(double at);

  DietDesk& desk_;
  QComboBox* subject_;
  QLineEdit* from_;
  QLineEdit* to_;
  QLabel* unit_;
  QLabel* sentence_;
  TraceChart* chart_;
  QLabel* reading_;
  QPushButton* try_;
  std::vector<TraceSubject> subjects_;
  QStringList shownSubjects_;
  std::optional<diet::Trace> trace_;
  Errand errand_;
};

}  // namespace tarebowl::ui
