// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_tab.h"

#include "ui/shared/plain_table.h"
#include "ui/shared/wrapping_row.h"

#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {

HealthTab::HealthTab(const QString& name, PlainTable* table, QWidget* parent)
    : QScrollArea(parent), asked_(new WrappingRow), words_(new QLabel), table_(table) {
  constexpr int kTableHeight = 200;
  setAccessibleName(name);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  table_->setMinimumHeight(kTableHeight);
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->addLayout(asked_);
  layout->addWidget(words_);
  layout->addWidget(table_, 1);
  setWidget(content);
}

}  // namespace tarebowl::ui
