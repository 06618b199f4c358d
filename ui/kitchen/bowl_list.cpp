// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/bowl_list.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/date_field.h"
#include "ui/shared/days.h"
#include "ui/shared/theme.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPixmap>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kMarkSide = 18;

QIcon markIcon(Mark mark) {
  QPixmap drawing(kMarkSide, kMarkSide);
  drawing.fill(Qt::transparent);
  QPainter painter(&drawing);
  paintMark(painter, QRectF(1, 1, kMarkSide - 2, kMarkSide - 2), mark, currentTheme());
  return drawing;
}

}  // namespace

BowlList::BowlList(KitchenDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      layout_(new QVBoxLayout(this)),
      sections_(new QComboBox),
      days_(new DateField),
      bowls_(new QListWidget) {
  build();
  connect(sections_, &QComboBox::textActivated, &desk_, &KitchenDesk::showSection);
  connect(days_, &QDateEdit::dateChanged, this, [this](QDate day) { desk_.showDay(toDate(day)); });
  connect(bowls_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row < 0 || !desk_.sheet()) return;
    const auto bowl = static_cast<std::size_t>(row);
    if (desk_.place() && desk_.place()->bowl == bowl) return;
    for (const SheetLine& line : linesToWeigh(desk_.sheet()->sheet))
      if (line.bowl == bowl) return desk_.goTo(line);
  });
  connect(&desk_, &KitchenDesk::sheetChanged, this, &BowlList::showSheet);
  connect(&desk_, &KitchenDesk::placeChanged, this, &BowlList::showPlace);
  showSheet();
}

void BowlList::build() {
  setObjectName(QStringLiteral("listPane"));
  setAttribute(Qt::WA_StyledBackground);
  sections_->setAccessibleName(tr("Section"));
  days_->setAccessibleName(tr("Day of the sheet"));
  days_->findChild<QLineEdit*>()->setAccessibleName(days_->accessibleName());
  days_->setDisplayFormat(tr("ddd d MMM yyyy", "a day and its weekday, as Qt writes formats"));
  bowls_->setAccessibleName(tr("Bowls of the sheet"));
  bowls_->setWordWrap(true);
  bowls_->setIconSize({kMarkSide, kMarkSide});
  bowls_->setSpacing(3);
  bowls_->setResizeMode(QListView::Adjust);
  bowls_->setTextElideMode(Qt::ElideNone);
  bowls_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  bowls_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  QFont big = bowls_->font();
  big.setPointSize(12);
  bowls_->setFont(big);
  layout_->setContentsMargins(12, 12, 12, 8);
  for (QWidget* part : std::initializer_list<QWidget*>{sections_, days_, bowls_}) layout_->addWidget(part);
}

void BowlList::addAtTop(QWidget* widget) {
  layout_->insertWidget(0, widget);
}

void BowlList::showSheet() {
  const QSignalBlocker quietSections(sections_);
  const QSignalBlocker quietDays(days_);
  const QSignalBlocker quietBowls(bowls_);
  sections_->clear();
  bowls_->clear();
  days_->setDate(toQDate(desk_.day()));
  if (!desk_.sheet()) return;
  for (const std::string& section : desk_.sheet()->sections)
    sections_->addItem(QString::fromStdString(section));
  sections_->setCurrentText(QString::fromStdString(desk_.sheet()->sheet.section));
  for (const intake::PrepBowl& bowl : desk_.sheet()->sheet.bowls) {
    const WeighedSoFar so = weighedSoFar(bowl);
    bowls_->addItem(new QListWidgetItem(
        markIcon(markOf(so)), QString::fromStdString(bowl.bowl.label) + QLatin1Char('\n') + soFarText(so)));
  }
  showPlace();
}

void BowlList::showPlace() {
  const QSignalBlocker quiet(bowls_);
  bowls_->setCurrentRow(desk_.place() ? static_cast<int>(desk_.place()->bowl) : -1);
}

}  // namespace tarebowl::ui
