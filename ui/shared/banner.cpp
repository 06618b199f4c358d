// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/banner.h"

#include <QLabel>

namespace tarebowl::ui {

QLabel* makeBanner() {
  auto* banner = new QLabel;
  banner->setProperty("banner", true);
  banner->setWordWrap(true);
  banner->setTextFormat(Qt::PlainText);
  banner->setTextInteractionFlags(Qt::TextSelectableByMouse);
  banner->hide();
  return banner;
}

}  // namespace tarebowl::ui
