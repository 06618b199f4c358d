// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QTableView;

namespace tarebowl::ui {

class NutrientNumbersModel;

/// A small table to type nutrients and their numbers into.
[[nodiscard]] QTableView* makeNutrientNumbersTable(NutrientNumbersModel& model, const QString& name);

}  // namespace tarebowl::ui
