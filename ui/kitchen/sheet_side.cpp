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

/// A portion in a line, its amount under the amounts above.
struct PortionLine {
  QString amount{};
  QString food{};
  QString raw{};  ///< what is to be taken out raw for it; empty: it is weighed as it is
};

std::vector<PortionLine> portionLines(const std::vector<intake::KitchenTotal>& totals, bool withRaw) {
  std::vector<PortionLine> lines;
  for (const intake::KitchenTotal& total : totals)
    lines.push_back(
        {portionText(total.amount, total.food), foodText(total.food), withRaw ? rawText(total) : QString()});
  return lines;
}

void fill(QLabel* label, const std::vector<PortionLine>& lines) {
  QString rows;
  for (const PortionLine& line : lines) {
    const QString raw = line.raw.isEmpty() ? QString() : QStringLiteral("<br>") + line.raw.toHtmlEscaped();
    QString amount = line.amount.toHtmlEscaped();
    amount.replace(QLatin1Char(' '), QChar::Nbsp);
    rows += QStringLiteral("<tr><td align='right' style='padding-right: 8px'>%1</td><td>%2%3</td></tr>")
                .arg(amount, line.food.toHtmlEscaped(), raw);
  }
  label->setTextFormat(Qt::RichText);
  label->setText(QStringLiteral("<table cellspacing='0' cellpadding='0'>%1</table>").arg(rows));
  label->parentWidget()->setVisible(!lines.empty());
}

QStringList asTexts(const std::vector<PortionLine>& lines) {
  QStringList texts;
  for (const PortionLine& line : lines) {
    texts << line.amount + QStringLiteral("  ") + line.food;
    if (!line.raw.isEmpty()) texts << line.raw;
  }
  return texts;
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
  portions_.clear();
  const auto fillPortions = [this](QLabel* label, const std::vector<PortionLine>& lines) {
    fill(label, lines);
    portions_ << asTexts(lines);
  };
  fillPortions(totals_, portionLines(sheet.totals, true));
  fillPortions(thaw_, portionLines(sheet.thawForTomorrow, false));
  fillPortions(gutLoad_, portionLines(sheet.gutLoadForTomorrow, false));
  QStringList without;
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl) without << withoutBowlText(group);
  fill(without_, without);
  fill(cautions_, asTexts(sheet.cautions));
  fill(hygiene_, desk_.sheet() ? hygieneTexts() : QStringList());
}

QString SheetSide::text() const {
  QStringList texts = portions_;
  for (const QLabel* label : {without_, cautions_, hygiene_}) texts << label->text();
  return texts.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
