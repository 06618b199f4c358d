// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/part_texts.h"

#include <QCoreApplication>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kTexts{
    PartText{"Finder",
             QT_TRANSLATE_NOOP("PartTexts", "Goes to any food, animal or diet by part of its name.")},
    PartText{"StatusLine",
             QT_TRANSLATE_NOOP("PartTexts",
                               "Whether all is on the disk, the units in force, whether this is the invented "
                               "sample, and who is at the keyboard: every change is kept under that name.")},
    PartText{
        "WaitingBar",
        QT_TRANSLATE_NOOP(
            "PartTexts",
            "What this desk wrote down while its server was away, and what the server has instead. Nothing "
            "is lost: it is sent in order, each entry once, and where both disagree you choose what "
            "counts.")},
    PartText{"Rail",
             QT_TRANSLATE_NOOP(
                 "PartTexts",
                 "The rooms of the window, Ctrl+1 to Ctrl+7, and below them the collection file and help.")},
    PartText{"StartPage", QT_TRANSLATE_NOOP("PartTexts", "No collection is open. Choose a way in.")},
    PartText{
        "GuidePanel",
        QT_TRANSLATE_NOOP("PartTexts", "The guide leads through the invented sample, a step at a time.")},
    PartText{
        "ReasonBar",
        QT_TRANSLATE_NOOP("PartTexts",
                          "A reason is kept with what you do, under your name, and can be read for good.")},
};

}  // namespace

std::span<const PartText> frameTexts() {
  return kTexts;
}

}  // namespace tarebowl::ui
