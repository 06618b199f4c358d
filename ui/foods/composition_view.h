// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/composition_model.h"

#include <QTreeView>

namespace tarebowl::ui {

/// The table of a food's nutrients. A row opens to the samples under it: right arrow, Return or a click.
class CompositionView : public QTreeView {
  Q_OBJECT
 public:
  explicit CompositionView(CompositionModel& model, QWidget* parent = nullptr);

 protected:
  void drawBranches(QPainter* painter, const QRect& rect, const QModelIndex& index) const override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void remember();
  void restore();
  void fitColumns();

  CompositionModel& composition_;
  std::vector<food::NutrientId> open_;
  std::optional<food::NutrientId> current_;
  std::optional<SampleId> currentSample_;
  std::optional<FoodId> food_;
  int position_ = 0;
};

}  // namespace tarebowl::ui
