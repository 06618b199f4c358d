// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/sheet_side.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/card.h"
#include "ui/shared/caution_text.h"

#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kPoints = 12;

void fill(QLabel* label, const QStringList& lines) {
  label->setText(lines.join(QLatin1Char('\n')));
  label->parentWidget()->setVisible(!lines.isEmpty());
}

QStringList totalLines(const std::vector<intake::KitchenTotal>& totals, bool withRaw) {
  QStringList lines;
  for (const intake::KitchenTotal& total : totals) {
    const QString raw = withRaw ? rawText(total) : QString();
    lines << portionText(total.amount, total.food) + QStringLiteral("  ") + foodText(total.food) +
                 (raw.isEmpty() ? QString() : QStringLiteral("\n    ") + raw);
  }
  return lines;
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
  totals_ = addCard(*layout, tr("The kitchen needs"));
  thaw_ = addCard(*layout, tr("Out of the freezer today, for tomorrow"));
  gutLoad_ = addCard(*layout, tr("Feed well today: live food of tomorrow"));
  without_ = addCard(*layout, tr("No bowl"));
  cautions_ = addCard(*layout, tr("Cautions"));
  hygiene_ = addCard(*layout, tr("Always"));
  layout->addStretch(1);
  setWidget(page);
  connect(&desk_, &KitchenDesk::sheetChanged, this, &SheetSide::showSheet);
  showSheet();
}

QLabel* SheetSide::addCard(QVBoxLayout& layout, const QString& heading) {
  auto* card = new QFrame;
  auto* label = new QLabel;
  QFont font = label->font();
  font.setPointSize(kPoints);
  label->setFont(font);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  layOutCard(*card, heading)->addWidget(label);
  card->findChild<QLabel*>(QStringLiteral("heading"))->setWordWrap(true);
  layout.addWidget(card);
  return label;
}

void SheetSide::showSheet() {
  const intake::PrepSheet sheet = desk_.sheet() ? desk_.sheet()->sheet : intake::PrepSheet{};
  fill(totals_, totalLines(sheet.totals, true));
  fill(thaw_, totalLines(sheet.thawForTomorrow, false));
  fill(gutLoad_, totalLines(sheet.gutLoadForTomorrow, false));
  QStringList without;
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl) without << withoutBowlText(group);
  fill(without_, without);
  fill(cautions_, asTexts(sheet.cautions));
  fill(hygiene_, desk_.sheet() ? hygieneTexts() : QStringList());
}

QString SheetSide::text() const {
  QStringList texts;
  for (const QLabel* label : {totals_, thaw_, gutLoad_, without_, cautions_, hygiene_})
    texts << label->text();
  return texts.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
