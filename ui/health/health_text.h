// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/health/health_desk.h"
#include "ui/shared/rows_model.h"

#include <QString>

#include <string>
#include <vector>

/// The Health room in words and rows, apart from its widgets.
namespace tarebowl::ui {

/// "Faeces", "Limping": what people call a kind of observation.
[[nodiscard]] QString kindText(health::SignKind kind);
/// "6 on faeces-7", "reduced", "calcium 2.4 mmol/l".
[[nodiscard]] QString whatWasSeen(const health::Observation& observation);

/// The newest first; the row's number leads back to the observation.
[[nodiscard]] std::vector<RowsModel::Row> observationRows(const HealthView& view);
[[nodiscard]] std::vector<RowsModel::Row> zoneRows(const HealthView& view);
[[nodiscard]] std::vector<RowsModel::Row> linkRows(const exchange::LookBackPage& page);
/// What was otherwise before the sign, how many days were compared, and that association is not cause.
[[nodiscard]] QString lookBackText(const exchange::LookBackPage& page);
[[nodiscard]] QString reviewText(const HealthView& view);

}  // namespace tarebowl::ui
