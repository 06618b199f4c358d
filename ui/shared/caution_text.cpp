// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/caution_text.h"

#include "core/animal/caution.h"

#include <QCoreApplication>

namespace tarebowl::ui {

QString cautionWords(const std::string& words) {
  return words.empty() ? QString() : QCoreApplication::translate("Cautions", words.c_str());
}

QString cautionSentence(const std::string& sentence) {
  for (const animal::FoodCaution& caution : animal::knownCautions()) {
    const std::string words = caution.reason + (caution.advice.empty() ? "" : ". " + caution.advice);
    if (!sentence.ends_with(words)) continue;
    QString text = QString::fromStdString(sentence.substr(0, sentence.size() - words.size()));
    text += cautionWords(caution.reason);
    return caution.advice.empty() ? text : text + QStringLiteral(" ") + cautionWords(caution.advice);
  }
  return QString::fromStdString(sentence);
}

}  // namespace tarebowl::ui
