// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"
#include "ui/kitchen/kitchen_export.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class BowlList;
class BowlPane;
class KitchenSwap;
class LeftoverPane;
class PanPane;
class ReasonBar;
class ScaleBar;
class SegmentedSwitch;
class SheetSide;
class SwapPane;
class ToleranceForm;
class WeighPane;

/// The kitchen: the sheet of a section and day, a card a bowl, the weigh-in. It only wires.
class KitchenRoom : public Room {
  Q_OBJECT
 public:
  KitchenRoom(OpenCollection& collection, Dialogs dialogs, KitchenDesk::Clock today,
              QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;
  void showSheet(const QString& section, quantity::Date day, KitchenDesk::Task task);

  /// Control pans of a section and day, the first that still stands ready for what came back of it.
  void showPans(const QString& section, quantity::Date day);

  /// What a scale has read: it stands in the field until a person keeps it.
  void takeWeight(quantity::Grams actual);

  [[nodiscard]] KitchenDesk& desk() const { return *desk_; }
  [[nodiscard]] WeighPane& weighPane() const { return *weigh_; }
  [[nodiscard]] LeftoverPane& leftoverPane() const { return *leftover_; }
  [[nodiscard]] BowlList& bowlList() const { return *list_; }
  [[nodiscard]] BowlPane& bowlPane() const { return *bowl_; }
  [[nodiscard]] SheetSide& side() const { return *side_; }
  [[nodiscard]] ReasonBar& reasonBar() const { return *reason_; }
  [[nodiscard]] ScaleBar& scaleBar() const { return *scale_; }
  [[nodiscard]] SwapPane& swapPane() const { return *swap_; }
  [[nodiscard]] PanPane& panPane() const { return *pans_; }
  [[nodiscard]] ToleranceForm& toleranceForm() const { return *tolerance_; }
  [[nodiscard]] bool isSwapping() const;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void build();
  void wire();
  void wireSwap();
  void wirePans();
  void addActions();
  void showTask();
  void openPans();
  struct SheetSought {
    std::string section{};
    quantity::Date day{};
  };
  [[nodiscard]] bool isOn(const SheetSought& sought) const;
  void write(KitchenPage page);
  void complain(const QString& text);
  void sayWhatWaits();

  OpenCollection& collection_;
  Dialogs dialogs_;
  KitchenDesk* desk_;
  ReasonBar* reason_;
  BowlList* list_;
  BowlPane* bowl_;
  WeighPane* weigh_;
  LeftoverPane* leftover_;
  QStackedWidget* onScale_;  ///< what is weighed in, or what came back
  SegmentedSwitch* task_;
  SheetSide* side_;
  ScaleBar* scale_;
  SwapPane* swap_;
  KitchenSwap* swapOfLine_;
  PanPane* pans_;
  ToleranceForm* tolerance_;
  QStackedWidget* middle_;  ///< the bowl on the scale, what to give instead of a food of it, or control pans
  QLabel* banner_;
  QWidget* buttons_;
  std::optional<SheetSought> pansSought_;  ///< whose pans open once the sheet is read
  QString note_;
};

}  // namespace tarebowl::ui
