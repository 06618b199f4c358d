// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rotation_status.h"

#include "app/streams.h"

namespace tarebowl::app {

int exitStatusOf(diet::RotationStatus status) {
  switch (status) {
    case diet::RotationStatus::Balanced:
    case diet::RotationStatus::Compromise:
      return kDone;
    case diet::RotationStatus::Impossible:
      return kImpossible;
    case diet::RotationStatus::Stopped:
    case diet::RotationStatus::Failed:
      break;
  }
  return kInternalFailure;
}

}  // namespace tarebowl::app
