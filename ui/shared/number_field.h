// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDoubleSpinBox>

namespace tarebowl::ui {

/// A number with arrows, read as `readNumber` reads it: Qt's own field takes the other mark for one that sets
/// thousands apart, and makes 15 of "1.5" in German. What cannot be read, or is finer or larger than the
/// field counts, stays in sight while it is typed; at the end the field goes back to what it held before, and
/// says why.
class NumberField : public QDoubleSpinBox {
  Q_OBJECT
 public:
  explicit NumberField(QWidget* parent = nullptr);

  QValidator::State validate(QString& text, int& pos) const override;
  [[nodiscard]] double valueFromText(const QString& text) const override;
  void fixup(QString& text) const override;

 signals:
  /// What was typed was not taken; the sentence says why and what to type.
  void refused(const QString& why) const;

 private:
  [[nodiscard]] QString numberIn(const QString& text) const;
  [[nodiscard]] QString whyNot(const QString& typed) const;

  bool isTyping_ = false;
  double before_ = 0.0;
};

}  // namespace tarebowl::ui
