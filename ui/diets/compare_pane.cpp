// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/compare_pane.h"

#include "ui/shared/plain_table.h"

#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {

ComparePane::ComparePane(QWidget* parent)
    : QWidget(parent), comparison_(new VersionComparison(this)), words_(new QLabel) {
  words_->setWordWrap(true);
  words_->setAccessibleDescription(tr("What differs between the versions"));
  auto* table = new PlainTable(tr("Two versions side by side"));
  table->setModel(comparison_);
  table->setWideColumn(VersionComparison::What);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(11, 8, 11, 9);
  layout->setSpacing(6);
  layout->addWidget(words_);
  layout->addWidget(table, 1);
  clear();
}

void ComparePane::clear() {
  comparison_->clear();
  words_->setText(tr("Choose a version to compare with under “More”."));
}

void ComparePane::show(const ComparedVersion& before, const ComparedVersion& after) {
  comparison_->show(before, after);
  const QStringList& sentences = comparison_->sentences();
  words_->setText(sentences.isEmpty() ? tr("Both versions say the same.")
                                      : sentences.join(QStringLiteral(" · ")));
}

}  // namespace tarebowl::ui
