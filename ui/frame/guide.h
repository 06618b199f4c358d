// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

class QWidget;

namespace tarebowl::ui {

/// A step of the guide: where it is done, and what to do. What stands between asterisks is what a control is
/// called on the screen.
struct GuideStep {
  int room = 0;  ///< its number on the rail
  QString text;
};

/// What one of the three people does, on the invented sample.
struct GuideFlow {
  QString title;
  std::vector<GuideStep> steps;
};

[[nodiscard]] std::vector<GuideFlow> guideFlows();

/// The controls that a step speaks of, in its order.
[[nodiscard]] QStringList controlsOf(const GuideStep& step);
/// The step as rich text, its controls in bold.
[[nodiscard]] QString htmlOf(const GuideStep& step);

/// The control in sight that is called so: by what it says, by its accessible name, or by the hint in an
/// empty field, whole or in its first words. Nothing where there is none.
[[nodiscard]] QWidget* controlInSight(const QWidget& window, const QString& name);

}  // namespace tarebowl::ui
