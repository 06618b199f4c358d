// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/start_page.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout;
  column->setSpacing(6);
  auto* heading = new QLabel(tr("A collection keeps your foods, and where each value comes from."));
  QFont large = heading->font();
  large.setPointSizeF(large.pointSizeF() * 1.25);
  large.setBold(true);
  heading->setFont(large);
  heading->setWordWrap(true);
  column->addWidget(heading);
  column->addSpacing(10);
  column->insertStretch(0, 1);
  const auto add = [&](const QString& name, const QString& what, void (StartPage::*wanted)()) {
    auto* button = new QPushButton(name);
    auto* text = new QLabel(what);
    text->setProperty("soft", true);
    text->setWordWrap(true);
    column->addWidget(button, 0, Qt::AlignLeft);
    column->addWidget(text);
    column->addSpacing(10);
    connect(button, &QPushButton::clicked, this, wanted);
  };
  add(tr("Open the invented sample"),
      tr("Foods of the Brackenmere Animal Gardens, which do not exist. To look around and try things."),
      &StartPage::sampleWanted);
  add(tr("Import a table…"),
      tr("A laboratory's or publisher's table (CSV, XLSX). It asks where the new collection is to be kept, "
         "and shows line by line what will happen before anything is written."),
      &StartPage::importWanted);
  add(tr("Start empty…"), tr("A new collection file, to which foods and lab samples are added one by one."),
      &StartPage::emptyWanted);
  auto* other = new QLabel(
      QStringLiteral("<a href=\"#\">%1</a>").arg(tr("Or open a collection that is there already…")));
  other->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  other->setAccessibleName(tr("Open a collection that is there already"));
  connect(other, &QLabel::linkActivated, this, &StartPage::openWanted);
  column->addWidget(other, 0, Qt::AlignLeft);
  column->addStretch(2);
  auto* middle = new QHBoxLayout(this);
  middle->addStretch(1);
  auto* block = new QWidget;
  block->setMaximumWidth(520);
  block->setLayout(column);
  middle->addWidget(block, 4);
  middle->addStretch(1);
}

}  // namespace tarebowl::ui
