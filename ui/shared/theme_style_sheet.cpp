// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a palette cannot say: borders, corners, paddings. Colours come from the theme by name.
#include "ui/shared/theme_pairs.h"

#include <QRegularExpression>

namespace tarebowl::ui {
namespace {

constexpr auto kTemplate = R"(
QToolTip { background: @card; color: @ink; border: 1px solid @line; padding: 2px 4px; }
QFrame[card="true"] { background: @card; border: 1px solid @line; border-radius: 7px; }
QLabel[soft="true"] { color: @soft; }
QLabel[banner="true"] { background: @card; color: @lacking; border: 1px solid @lacking; border-radius: 6px; padding: 6px 10px; }
QLabel[banner="true"][topmost="true"] { margin-top: 10px; }

QLineEdit { background: @card; color: @ink; border: 1px solid @edge; border-radius: 5px; padding: 3px 7px;
  selection-background-color: @accent; selection-color: @onAccent; }
QLineEdit:focus { border: 2px solid @accent; padding: 2px 6px; }
QSpinBox#port { background: @card; color: @ink; border: 1px solid @edge; border-radius: 5px; padding: 3px 7px; }
QSpinBox#port:focus { border: 2px solid @accent; padding: 2px 6px; }
QAbstractSpinBox QLineEdit, QAbstractSpinBox QLineEdit:focus { border: none; padding: 0px; background: transparent; }

QComboBox { background: @card; color: @ink; border: 1px solid @edge; border-radius: 5px; padding: 3px 7px; }
QComboBox:focus { border: 2px solid @accent; padding: 2px 6px; }
QComboBox QLineEdit, QComboBox QLineEdit:focus { border: none; padding: 0px; background: transparent; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox QAbstractItemView { background: @card; border: 1px solid @line; selection-background-color: @selected; selection-color: @ink; }
QCheckBox { color: @ink; spacing: 7px; }
QCheckBox::indicator:unchecked { border: 1px solid @edge; border-radius: 3px; background: @card; width: 12px; height: 12px; }
QListView::indicator { border: 1px solid @edge; border-radius: 3px; background: @card; width: 12px; height: 12px; }
QListView::indicator:checked { border: 1px solid @accent; background: @accent; width: 12px; height: 12px; }
QPushButton, QToolButton[plain="true"] { background: @card; color: @ink; border: 1px solid @edge; border-radius: 6px; padding: 4px 9px; }
QPushButton#primary { background: @accent; color: @onAccent; border: 1px solid @accent; }
QPushButton#primary:disabled { background: @paper; color: @soft; border: 1px solid @line; }
QPushButton:hover, QToolButton[plain="true"]:hover { background: @selected; }
QPushButton:focus, QToolButton[plain="true"]:focus { border: 2px solid @accent; padding: 3px 8px; }
QPushButton#primary:focus { border: 2px solid @ink; }
QPushButton:disabled, QToolButton[plain="true"]:disabled { color: @soft; background: @paper; border: 1px solid @line; }
QToolButton[plain="true"]::menu-indicator { image: none; width: 0px; }
QToolButton[icon="true"] { padding: 4px 6px; }
QToolButton[icon="true"]:focus { padding: 3px 5px; }

QFrame#segmented { background: @card; border: 1px solid @edge; border-radius: 6px; }
QFrame#segmented QPushButton { background: transparent; border: none; border-radius: 0px; padding: 4px 8px; color: @ink; }
QFrame#segmented QPushButton:checked { background: @selected; font-weight: bold; }
QFrame#segmented QPushButton[place="first"] { border-top-left-radius: 5px; border-bottom-left-radius: 5px; }
QFrame#segmented QPushButton[place="last"] { border-top-right-radius: 5px; border-bottom-right-radius: 5px; }
QFrame#segmented[small="true"] QPushButton { padding: 0px 6px; }
QFrame#segmented QPushButton:focus { color: @accent; text-decoration: underline; border: none; padding: 4px 8px; }
QFrame#segmented[small="true"] QPushButton:focus { padding: 0px 6px; }

QWidget#rail { background: @rail; }
QWidget#rail QToolButton { color: @onRail; background: transparent; border: none; padding: 9px 0px 8px 0px; border-radius: 0px; }
QWidget#rail[tight="true"] QToolButton { padding: 2px 0px 1px 0px; }
QWidget#rail QToolButton:checked { background: @paper; color: @ink; font-weight: bold; }
QWidget#rail QToolButton:focus { border-left: 3px solid @onRail; }
QWidget#rail QToolButton:checked:focus { border-left: 3px solid @accent; }

QWidget#listPane { border-right: 1px solid @line; }
QWidget#balancePane { border-left: 1px solid @line; }
QWidget#statusLine { border-top: 1px solid @line; }
QWidget#statusLine QLabel { color: @soft; }
QLineEdit#person { background: transparent; border: 1px solid transparent; color: @soft; padding: 0px 4px; }
QLineEdit#person:focus { background: @card; border: 1px solid @accent; color: @ink; padding: 0px 4px; }

QAbstractItemView { background: transparent; color: @ink; border: none; outline: 0; selection-background-color: @selected; selection-color: @ink; }
QListView#dietList { background: transparent; }
QListView#matches { background: @card; border: 1px solid @line; padding: 3px; }
QHeaderView { background: transparent; border: none; }
QHeaderView::section { background: transparent; color: @soft; border: none; border-bottom: 1px solid @line; padding: 3px 7px; font-weight: normal; }
QTableView QTableCornerButton::section { background: transparent; border: none; }
QScrollArea { background: transparent; border: none; }
QScrollArea > QWidget > QWidget { background: transparent; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle { background: @edge; border-radius: 4px; min-height: 24px; min-width: 24px; }
QScrollBar::handle:hover { background: @soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QMenu { background: @card; color: @ink; border: 1px solid @line; padding: 4px; }
QMenu::item { padding: 5px 22px 5px 22px; border-radius: 4px; }
QMenu::item:selected { background: @selected; color: @ink; }
QMenu::item:disabled { color: @soft; }
QMenu::separator { height: 1px; background: @line; margin: 4px 6px; }
)";

}  // namespace

QString styleSheetTemplate() {
  return QString::fromLatin1(kTemplate);
}

QString styleSheetOf(const Theme& theme) {
  const QString sheet = styleSheetTemplate();
  static const QRegularExpression kName(QStringLiteral("@(\\w+)"));
  QString inked;
  qsizetype written = 0;
  for (auto found = kName.globalMatch(sheet); found.hasNext();) {
    const QRegularExpressionMatch name = found.next();
    inked += QStringView(sheet).mid(written, name.capturedStart() - written);
    for (const ThemeColor& color : themeColors())
      if (name.capturedView(1) == QLatin1String(color.name)) inked += (theme.*color.color).name();
    written = name.capturedEnd();
  }
  inked += QStringView(sheet).mid(written);
  return inked;
}

}  // namespace tarebowl::ui
