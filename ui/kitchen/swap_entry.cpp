// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_entry.h"

#include "ui/collection/open_collection.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/version_document.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/kitchen/swap_sentences.h"

#include <utility>

namespace tarebowl::ui {

using transfer::Candidates;

SwapEntry::SwapEntry(DietDesk& desk, const VersionDocument& document, OpenCollection& collection,
                     SwapPane& pane, QObject* parent)
    : QObject(parent), desk_(desk), document_(document), collection_(collection), pane_(pane) {
  connect(&pane_, &SwapPane::dismissed, this, [this] { sought_.reset(); });
  connect(&pane_, &SwapPane::used, this, [this](const SwapOffers& offers, const diet::Swap& swap) {
    sought_.reset();
    emit told(tr("instead of %1: %2 %3 (the diet itself is as it was)")
                  .arg(missingText(*offers.request), swapGramsText(*offers.request, swap),
                       swapFoodsText(*offers.request, swap)));
  });
}

void SwapEntry::notAvailable(std::size_t food) {
  if (food >= desk_.problem().foods.size()) return;
  emit opened();
  if (!(desk_.draft().grams[food] > quantity::Grams(0)))
    return pane_.say(tr("This diet gives nothing of it: nothing is missing."));
  if (!collection_.file()) return pane_.say(tr("Open a collection first: its foods are what there is."));
  pane_.say(tr("Reading what is on hand…"));
  sought_ = food;
  const std::string id = desk_.problem().foods[food].id;
  for (const Candidates which : {Candidates::OwnGroup, Candidates::All}) {
    transfer::OnHand onHand;
    if (document_.shown()) onHand.eaters = transfer::eatersOf(*document_.shown(), document_.today());
    if (which == Candidates::OwnGroup) onHand.groups = {desk_.problem().foods[food].group};
    collection_.ask(
        [problem = desk_.problem(), onHand](store::Collection& collection) {
          return transfer::foodsOnHand(collection, problem, onHand);
        },
        [this, food, id, which](std::vector<diet::DietFood> candidates) {
          const auto& foods = desk_.problem().foods;
          if (sought_ == food && food < foods.size() && foods[food].id == id)
            seekAmong(food, std::move(candidates), which);
        });
  }
}

void SwapEntry::seekAmong(std::size_t food, std::vector<diet::DietFood> candidates, Candidates which) {
  const DietDraft& draft = desk_.draft();
  diet::SwapRequest request;
  request.problem = problemToSolve(draft);
  request.approved = draft.grams;
  request.missing = {food};
  request.candidates = std::move(candidates);
  std::erase_if(request.candidates,
                [&](const diet::DietFood& candidate) { return candidate.id == draft.places[food].food; });
  pane_.seek(std::move(request), which);
}

}  // namespace tarebowl::ui
