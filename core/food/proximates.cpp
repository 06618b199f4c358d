// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/proximates.h"

namespace tarebowl::food {

std::vector<NutrientId> proximates() {
  using namespace nutrients;
  return {water(),      protein(),           fat(),    ash(),   carbohydrateByDifference(),
          crudeFibre(), totalDietaryFibre(), starch(), sugar(), energy()};
}

}  // namespace tarebowl::food
