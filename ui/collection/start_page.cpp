// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/start_page.h"

#include "ui/shared/banner.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

StartPage::StartPage(QWidget* parent)
    : RoomHint(tr("A collection keeps your foods, animals, diets and feeding days in one file, and where "
                  "each number comes from."),
               parent),
      banner_(makeBanner()) {
  column().insertWidget(1, banner_);
  const auto add = [this](const QString& name, const QString& what, void (StartPage::*wanted)()) {
    connect(&addWay(name, what), &QPushButton::clicked, this, wanted);
  };
  add(tr("Open the invented sample"),
      tr("The Brackenmere Animal Gardens, which do not exist: foods, animals, diets and four months of "
         "feeding. To look around and try things; Help at the foot of the rail leads through it."),
      &StartPage::sampleWanted);
  add(tr("Import a table…"),
      tr("A laboratory's or publisher's table of foods (CSV, XLSX). It asks where the new collection is to "
         "be kept, and shows line by line what will happen before anything is written."),
      &StartPage::importWanted);
  add(tr("Start empty…"),
      tr("A new collection file, to which foods, animals and diets are added one by one. Each room says what "
         "to do first."),
      &StartPage::emptyWanted);
  addLink(tr("Or open a collection that is there already…"), tr("Open a collection that is there already"),
          &StartPage::openWanted);
  addLink(tr("Or one on a server, which several desks share…"), tr("Open a collection on a server"),
          &StartPage::serverWanted);
}

void StartPage::addLink(const QString& name, const QString& spoken, void (StartPage::*wanted)()) {
  auto* link = new QLabel(QStringLiteral("<a href=\"#\">%1</a>").arg(name));
  link->setTextFormat(Qt::RichText);
  link->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  link->setAccessibleName(spoken);
  connect(link, &QLabel::linkActivated, this, wanted);
  column().insertWidget(column().count() - 1, link, 0, Qt::AlignLeft);
}

void StartPage::say(const QString& trouble) {
  banner_->setText(trouble);
  banner_->setVisible(!trouble.isEmpty());
}

}  // namespace tarebowl::ui
