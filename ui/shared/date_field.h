// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateEdit>
#include <QLocale>

#include <optional>

namespace tarebowl::ui {

/// A day as people type it: as ISO 8601 says (2026-11-25), or in figures as the locale orders them, with the
/// whole year (25.11.2026, 25/11/2026).
[[nodiscard]] std::optional<QDate> readDate(const QString& text, const QLocale& locale = QLocale());

/// A day with a calendar to open, shown with the month's name. Part by part it is typed as in Qt's own field;
/// over all of it (Ctrl+A) a day is typed as `readDate` reads it.
class DateField : public QDateEdit {
 public:
  explicit DateField(QWidget* parent = nullptr);

 protected:
  QValidator::State validate(QString& text, int& pos) const override;
  [[nodiscard]] QDateTime dateTimeFromText(const QString& text) const override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  bool isTypedWhole_ = false;
};

}  // namespace tarebowl::ui
