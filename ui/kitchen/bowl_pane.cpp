// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/bowl_pane.h"

#include "ui/kitchen/bowl_model.h"
#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/plain_table.h"

#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kLabelPoints = 22;
constexpr int kFactsPoints = 13;
constexpr int kRowHeight = 36;

QFont sized(const QFont& font, int points, bool bold) {
  QFont made = font;
  made.setPointSize(points);
  made.setBold(bold);
  return made;
}

}  // namespace

BowlPane::BowlPane(KitchenDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      label_(new QLabel),
      facts_(new QLabel),
      given_(new QLabel),
      model_(new BowlModel(desk, this)),
      table_(new PlainTable(tr("Foods of the bowl"))) {
  setProperty("card", true);
  setAccessibleName(tr("The bowl"));
  label_->setFont(sized(label_->font(), kLabelPoints, true));
  label_->setWordWrap(true);
  facts_->setFont(sized(facts_->font(), kFactsPoints, false));
  given_->setFont(sized(given_->font(), kFactsPoints, false));
  given_->setWordWrap(true);
  table_->setModel(model_);
  table_->setWideColumn(BowlModel::Preparation);  // cut first: it stands whole beside the weight
  table_->verticalHeader()->setDefaultSectionSize(kRowHeight);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 12, 16, 12);
  for (QWidget* part : std::initializer_list<QWidget*>{label_, facts_}) layout->addWidget(part);
  layout->addWidget(table_, 1);
  layout->addWidget(given_);
  connect(&desk_, &KitchenDesk::sheetChanged, this, &BowlPane::showBowl);
  connect(&desk_, &KitchenDesk::placeChanged, this, &BowlPane::showBowl);
  connect(table_, &QAbstractItemView::clicked, this, [this](const QModelIndex& index) {
    if (!desk_.place()) return;
    const SheetLine line{desk_.place()->bowl, static_cast<std::size_t>(index.row())};
    if (!desk_.bowl()->bowl.items.at(line.item).swappedOut) desk_.goTo(line);
  });
  showBowl();
}

void BowlPane::showBowl() {
  const intake::PrepBowl* bowl = desk_.bowl();
  label_->setText(bowl != nullptr ? QString::fromStdString(bowl->bowl.label) : QString());
  facts_->setText(bowl != nullptr ? bowlFacts(*bowl) : QString());
  QStringList given;
  if (bowl != nullptr)
    for (const diet::Allowance& allowance : bowl->allowances)
      given << allowanceText(allowance, desk_.sheet()->foodOf(allowance.food));
  given_->setText(given.join(QLatin1Char('\n')));
  given_->setVisible(!given.isEmpty());
  if (desk_.place()) table_->selectRow(static_cast<int>(desk_.place()->item));
}

}  // namespace tarebowl::ui
