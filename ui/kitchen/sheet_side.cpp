// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/sheet_side.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/card.h"
#include "ui/shared/caution_text.h"

#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kPoints = 12;

void fill(QLabel* label, const QStringList& lines) {
  label->setText(lines.join(QLatin1Char('\n')));
  label->parentWidget()->setVisible(!lines.isEmpty());
}

std::vector<Portion> portionsOf(const std::vector<intake::KitchenTotal>& totals, bool withRaw) {
  std::vector<Portion> portions;
  for (const intake::KitchenTotal& total : totals)
    portions.push_back(
        {portionText(total.amount, total.food), foodText(total.food), withRaw ? rawText(total) : QString()});
  return portions;
}

void fill(PortionList* list, std::vector<Portion> portions) {
  list->parentWidget()->setVisible(!portions.empty());
  list->setPortions(std::move(portions));
}

QLabel* sentences() {
  auto* label = new QLabel;
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QStringList asTexts(const std::vector<std::string>& cautions) {
  QStringList lines;
  for (const std::string& caution : cautions) lines << cautionSentence(caution);
  return lines;
}

}  // namespace

SheetSide::SheetSide(KitchenDesk& desk, QWidget* parent) : QScrollArea(parent), desk_(desk) {
  setWidgetResizable(true);
  setAccessibleName(tr("The sheet beside the bowls"));
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 0, 8, 0);
  layout->setSpacing(10);
  totals_ = addCard(*layout, tr("The kitchen needs"), new PortionList);
  thaw_ = addCard(*layout, tr("Out of the freezer today, for tomorrow"), new PortionList);
  gutLoad_ = addCard(*layout, tr("Feed well today: live food of tomorrow"), new PortionList);
  without_ = addCard(*layout, tr("No bowl"), sentences());
  cautions_ = addCard(*layout, tr("Cautions"), sentences());
  hygiene_ = addCard(*layout, tr("Always"), sentences());
  layout->addStretch(1);
  setWidget(page);
  connect(&desk_, &KitchenDesk::sheetChanged, this, &SheetSide::showSheet);
  showSheet();
}

template <class Content>
Content* SheetSide::addCard(QVBoxLayout& layout, const QString& heading, Content* content) {
  auto* card = new QFrame;
  QFont font = content->font();
  font.setPointSize(kPoints);
  content->setFont(font);
  layOutCard(*card, heading)->addWidget(content);
  card->findChild<QLabel*>(QStringLiteral("heading"))->setWordWrap(true);
  layout.addWidget(card);
  return content;
}

void SheetSide::showSheet() {
  const intake::PrepSheet sheet = desk_.sheet() ? desk_.sheet()->sheet : intake::PrepSheet{};
  fill(totals_, portionsOf(sheet.totals, true));
  fill(thaw_, portionsOf(sheet.thawForTomorrow, false));
  fill(gutLoad_, portionsOf(sheet.gutLoadForTomorrow, false));
  QStringList without;
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl) without << withoutBowlText(group);
  fill(without_, without);
  fill(cautions_, asTexts(sheet.cautions));
  fill(hygiene_, desk_.sheet() ? hygieneTexts() : QStringList());
}

QString SheetSide::text() const {
  QStringList texts;
  for (const PortionList* list : {totals_, thaw_, gutLoad_}) texts << list->texts();
  for (const QLabel* label : {without_, cautions_, hygiene_}) texts << label->text();
  return texts.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
