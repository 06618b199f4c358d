// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {

QVBoxLayout* layOutCard(QFrame& card, const QString& heading) {
  card.setProperty("card", true);
  card.setAccessibleName(heading);
  auto* layout = new QVBoxLayout(&card);
  layout->setContentsMargins(13, 9, 13, 9);
  layout->setSpacing(5);
  auto* label = new QLabel(heading);
  label->setObjectName(QStringLiteral("heading"));
  label->setProperty("soft", true);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  label->setWordWrap(true);
  label->setMinimumHeight(QFontMetrics(bold).height());
  layout->addWidget(label);
  return layout;
}

}  // namespace tarebowl::ui
