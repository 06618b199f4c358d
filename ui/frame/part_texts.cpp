// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>
#include <QMetaObject>

#include <algorithm>

namespace tarebowl::ui {

QString partText(const QMetaObject& part) {
  std::string_view name = part.className();
  if (const auto colon = name.rfind(':'); colon != std::string_view::npos) name.remove_prefix(colon + 1);
  for (const auto& texts : {foodsTexts(), animalsTexts(), dietsTexts(), keepersTexts(), frameTexts()}) {
    const auto found = std::ranges::find(texts, name, &PartText::part);
    if (found != texts.end()) return QCoreApplication::translate("PartTexts", found->text);
  }
  return {};
}

}  // namespace tarebowl::ui
