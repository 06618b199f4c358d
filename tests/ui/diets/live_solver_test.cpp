// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/live_solver.h"

#include "tests/ui/diets/example_diet.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <atomic>
#include <latch>
#include <stdexcept>
#include <thread>

namespace tarebowl::ui {
namespace {

diet::BalanceProblem titled(const char* title) {
  diet::BalanceProblem problem = exampleProblem();
  problem.title = title;
  return problem;
}

/// Answers with the problem's title, so that a test sees whose answer it is.
diet::DietSolution echo(const diet::BalanceProblem& problem, const diet::SolveOptions& /*options*/) {
  diet::DietSolution solution;
  solution.reason = problem.title;
  return solution;
}

TEST(LiveSolver, AnswersOnTheThreadThatAsked) {
  LiveSolver solver(&echo);
  std::string answer;
  const QThread* thread = nullptr;
  QObject::connect(&solver, &LiveSolver::solved, &solver, [&](const diet::DietSolution& solution) {
    answer = solution.reason;
    thread = QThread::currentThread();
  });
  solver.request(titled("first"));
  EXPECT_TRUE(solver.isBusy());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !answer.empty(); }));
  EXPECT_EQ(answer, "first");
  EXPECT_EQ(thread, QThread::currentThread());
  EXPECT_FALSE(solver.isBusy());
}

TEST(LiveSolver, ANewerRequestStopsTheOneAtWorkAndOnlyTheNewestIsAnnounced) {
  std::latch started(1);
  std::atomic<bool> stopped = false;
  LiveSolver solver([&](const diet::BalanceProblem& problem, const diet::SolveOptions& options) {
    if (problem.title == "slow") {
      started.count_down();
      while (!options.stop.stop_requested()) std::this_thread::yield();
      stopped = true;
    }
    return echo(problem, options);
  });
  QStringList answers;
  QObject::connect(&solver, &LiveSolver::solved, &solver,
                   [&](const auto& solution) { answers << QString::fromStdString(solution.reason); });
  solver.request(titled("slow"));
  started.wait();
  solver.request(titled("skipped"));
  solver.request(titled("newest"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.isEmpty(); }));
  QTest::qWait(20);
  EXPECT_TRUE(stopped);
  EXPECT_EQ(answers, QStringList{QStringLiteral("newest")});
}

TEST(LiveSolver, AnnouncesNothingThatWasCancelled) {
  std::latch finish(1);
  LiveSolver solver([&](const auto& problem, const auto& options) {
    finish.wait();
    return echo(problem, options);
  });
  QSignalSpy spy(&solver, &LiveSolver::solved);
  solver.request(titled("cancelled"));
  solver.cancel();
  EXPECT_FALSE(solver.isBusy());
  finish.count_down();
  QTest::qWait(30);
  EXPECT_EQ(spy.count(), 0);
}

TEST(LiveSolver, TurnsAnExceptionIntoAFailedAnswer) {
  LiveSolver solver(
      [](const auto&, const auto&) -> diet::DietSolution { throw std::runtime_error("no water"); });
  diet::DietSolution answer;
  answer.status = diet::DietStatus::Balanced;
  QObject::connect(&solver, &LiveSolver::solved, &solver, [&](const auto& solution) { answer = solution; });
  solver.request(titled("any"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !solver.isBusy(); }));
  EXPECT_EQ(answer.status, diet::DietStatus::Failed);
  EXPECT_EQ(answer.reason, "no water");
}

TEST(LiveSolver, ShowsAGoodBowlAtOnceAndTheProvedOneLater) {
  std::atomic<int> goes = 0;
  LiveSolver solver([&](const auto& problem, const auto& options) {
    diet::DietSolution solution = exampleSolve(problem, options);
    solution.provenGap = ++goes == 1 ? 0.2 : 0.0;
    return solution;
  });
  std::vector<std::pair<double, bool>> heard;
  QObject::connect(&solver, &LiveSolver::solved, &solver,
                   [&](const auto& solution) { heard.emplace_back(solution.provenGap, solver.isBusy()); });
  solver.request(titled("hard"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !solver.isBusy(); }));
  EXPECT_EQ(heard, (std::vector<std::pair<double, bool>>{{0.2, true}, {0.0, false}}));
}

TEST(LiveSolver, KeepsQuietWhileThereIsNoBowlYet) {
  std::atomic<int> goes = 0;
  LiveSolver solver([&](const auto& problem, const auto& options) {
    diet::DietSolution solution;
    solution.status = diet::DietStatus::Stopped;
    return ++goes == 1 ? solution : exampleSolve(problem, options);
  });
  QSignalSpy spy(&solver, &LiveSolver::solved);
  solver.request(titled("slow"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !solver.isBusy(); }));
  EXPECT_EQ(spy.count(), 1);
}

TEST(LiveSolver, CanBeDroppedWhileItWorks) {
  std::latch started(1);
  {
    LiveSolver solver([&](const auto& problem, const diet::SolveOptions& options) {
      started.count_down();
      while (!options.stop.stop_requested()) std::this_thread::yield();
      return echo(problem, options);
    });
    solver.request(titled("endless"));
    started.wait();
  }
  SUCCEED() << "the thread has ended with its owner";
}

}  // namespace
}  // namespace tarebowl::ui
