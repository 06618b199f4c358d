// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_swap.h"

#include "ui/kitchen/kitchen_desk.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/kitchen/swap_sentences.h"

#include <utility>

namespace tarebowl::ui {
namespace {

using transfer::Candidates;
using transfer::NoSwap;

QString reasonText(NoSwap why) {
  switch (why) {
    case NoSwap::NoDiet:
      return KitchenSwap::tr("This bowl is fed by no diet of the collection: ask the nutritionist.");
    case NoSwap::NotInDiet:
      return KitchenSwap::tr("This food is not of the diet, it came by a swap: ask the nutritionist.");
    case NoSwap::Weighed:
      return KitchenSwap::tr("It is weighed in already: correct its weight first.");
  }
  return {};
}

}  // namespace

KitchenSwap::KitchenSwap(KitchenDesk& desk, SwapPane& pane, QObject* parent)
    : QObject(parent), desk_(desk), pane_(pane) {
  connect(&pane_, &SwapPane::used, this, &KitchenSwap::take);
  connect(&pane_, &SwapPane::dismissed, this, [this] { line_.reset(); });
  connect(&pane_, &SwapPane::countedChosen, this, &KitchenSwap::seek);
  pane_.offerCounting();
}

void KitchenSwap::notAvailable() {
  if (desk_.item() == nullptr || desk_.collection().isReadOnly()) return;
  line_ = Line{*desk_.bowl(), *desk_.item()};
  emit opened();
  seek();
}

void KitchenSwap::seek() {
  if (!line_) return;
  pane_.say(tr("Reading what is on hand…"));
  for (const Candidates which : {Candidates::OwnGroup, Candidates::All})
    desk_.collection().ask(
        [line = *line_, which, counted = pane_.counted()](store::Collection& collection) {
          return transfer::swapRequestOn(collection, line.bowl, line.item, which, counted);
        },
        [this, key = line_->bowl.bowl.key, item = line_->item.item, which,
         counted = pane_.counted()](std::variant<diet::SwapRequest, NoSwap> asked) {
          const bool isSought = line_ && line_->bowl.bowl.key == key && line_->item.item == item;
          if (isSought && counted == pane_.counted()) show(std::move(asked), which);
        });
}

void KitchenSwap::show(std::variant<diet::SwapRequest, NoSwap> asked, Candidates which) {
  if (const auto* why = std::get_if<NoSwap>(&asked)) return pane_.say(reasonText(*why));
  pane_.seek(std::move(std::get<diet::SwapRequest>(asked)), which);
}

void KitchenSwap::take(const SwapOffers& offers, const diet::Swap& swap) {
  if (!line_) return;
  const diet::SwapRequest& request = *offers.request;
  intake::SwapMade made =
      transfer::swapMade(line_->bowl.bowl, line_->item, request, swap, tr("not available").toStdString());
  const QString what =
      tr("instead of %1: %2 %3")
          .arg(missingText(request), swapGramsText(request, swap), swapFoodsText(request, swap));
  const bool waits = made.approval == intake::SwapApproval::Waiting;
  line_.reset();
  desk_.swapFood(std::move(made));
  emit taken(waits ? tr("%1 – waits for the nutritionist, see Today").arg(what) : what);
}

}  // namespace tarebowl::ui
