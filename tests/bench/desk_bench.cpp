// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_foods.h"
#include "ui/diets/balance_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/shared/balance_ladder.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QHBoxLayout>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <optional>
#include <utility>
#include <vector>

// The design desk as a hand feels it, on the offscreen platform: from a number typed to the ladder that was
// painted with the first bowl (median, 99th percentile, and the solver's part of it), and from a diet chosen
// to its ladder painted.

namespace tarebowl::bench {
namespace {

constexpr std::size_t kFoods = 25;
constexpr std::size_t kTargets = 35;
constexpr int kKeystrokes = 40;
constexpr qint64 kPatienceMs = 10'000;

const std::vector<diet::DietFood>& foods() {
  static const std::vector<diet::DietFood> read = [] {
    const char* table = std::getenv("TAREBOWL_IFCT_CSV");
    return table == nullptr ? std::vector<diet::DietFood>() : reference::readIfctFoods(table);
  }();
  return read;
}

double quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1, static_cast<std::size_t>(share * double(values.size())))];
}

/// The middle and the right of the room.
class Desk : public QObject {
 public:
  Desk() : layout_(&window_), middle_(desk_), right_(desk_) {
    layout_.addWidget(&middle_);
    layout_.addWidget(&right_);
    window_.resize(1366, 768);
    window_.show();
    right_.findChild<ui::BalanceLadder*>()->viewport()->installEventFilter(this);
    // The first bowl that is shown, whether or not a better one is still looked for.
    connect(&desk_, &ui::DietDesk::solvingChanged, this, [this] {
      if (isAnswered_ || (!desk_.solution() && !desk_.isReadOnly())) return;
      isAnswered_ = true;
      isPainted_ = false;
    });
  }
  ui::DietDesk& desk() { return desk_; }
  [[nodiscard]] double solverMs() const { return static_cast<double>(solverUs_) / 1000.0; }

  /// Milliseconds until the ladder was painted with the answer; nothing where nothing changed, as where a
  /// food was put back to the number that is typed.
  template <class Act>
  std::optional<double> timed(const Act& act) {
    isAnswered_ = isPainted_ = false;
    solverUs_ = 0;
    QElapsedTimer clock;
    clock.start();
    act();
    if (!desk_.isSolving() && !desk_.isReadOnly()) return std::nullopt;
    while (!(isAnswered_ && isPainted_) && clock.elapsed() < kPatienceMs)
      QApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
  }

  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Paint) isPainted_ = true;
    return QObject::eventFilter(watched, event);
  }

 private:
  std::atomic<std::int64_t> solverUs_ = 0;
  QWidget window_;
  QHBoxLayout layout_;
  ui::DietDesk desk_{[this](const diet::BalanceProblem& problem, const diet::SolveOptions& options) {
    diet::DietSolution solution = diet::solve(problem, options);
    solverUs_ += solution.solveTime.count();
    return solution;
  }};
  ui::DeskPane middle_;
  ui::BalancePane right_;
  bool isAnswered_ = false;
  bool isPainted_ = false;
};

diet::BalanceProblem problemOf(std::uint64_t seed, std::size_t count) {
  return reference::randomBalance(foods(),
                                  {.seed = seed, .foods = count, .targets = kTargets, .wholeSteps = true});
}

void report(benchmark::State& state, const std::vector<double>& times, const std::vector<double>& solver) {
  state.counters["median_ms"] = quantile(times, 0.5);
  state.counters["p99_ms"] = quantile(times, 0.99);
  state.counters["worst_ms"] = quantile(times, 1.0);
  state.counters["solver_median_ms"] = quantile(solver, 0.5);
  state.counters["solver_p99_ms"] = quantile(solver, 0.99);
}

/// A gram more of one food after the other, or less where more is not allowed: a number that moves.
std::pair<std::size_t, quantity::Grams> typed(const ui::DietDraft& draft, std::size_t k) {
  const std::size_t food = k % draft.grams.size();
  const quantity::Grams more = draft.grams[food] + quantity::Grams(1);
  const auto& most = draft.problem.foods[food].max;
  return {food, most && more > *most ? draft.grams[food] - quantity::Grams(1) : more};
}

void keystroke(benchmark::State& state) {
  if (foods().empty()) return state.SkipWithError("TAREBOWL_IFCT_CSV names no table");
  for (auto _ : state) {
    std::vector<double> times;
    std::vector<double> solver;
    Desk desk;
    desk.desk().open(problemOf(static_cast<std::uint64_t>(state.range(0)), kFoods));
    (void)desk.timed([&] { desk.desk().setHolding(false); });
    for (int k = 0; k < kKeystrokes; ++k) {
      const auto [food, amount] = typed(desk.desk().draft(), static_cast<std::size_t>(k));
      const auto time = desk.timed([&] { desk.desk().setGrams(food, amount); });
      if (!time) continue;
      times.push_back(*time);
      solver.push_back(desk.solverMs());
    }
    state.SetIterationTime(quantile(times, 0.5) / 1000.0);
    report(state, times, solver);
  }
}
BENCHMARK(keystroke)->DenseRange(1, 5)->Iterations(1)->UseManualTime()->Unit(benchmark::kMillisecond);

/// Of 40 foods; the diet is shown as it stands before anything is solved.
void openDiet(benchmark::State& state) {
  if (foods().empty()) return state.SkipWithError("TAREBOWL_IFCT_CSV names no table");
  Desk desk;
  std::uint64_t seed = 1;
  for (auto _ : state) {
    ui::DietDraft draft = ui::draftOf(problemOf(seed++, 40));
    const auto shown = desk.timed([&] { desk.desk().open(std::move(draft), ui::DietDesk::Opening::ToRead); });
    state.SetIterationTime(shown.value() / 1000.0);
  }
}
BENCHMARK(openDiet)->Iterations(20)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tarebowl::bench

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
