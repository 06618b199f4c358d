// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/study_page.h"

#include "ui/collection/conflict_text.h"
#include "ui/intake/faeces_card.h"
#include "ui/intake/group_choice.h"
#include "ui/intake/study_text.h"
#include "ui/intake/subject_box.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/date_field.h"
#include "ui/shared/days.h"
#include "ui/shared/number_field.h"
#include "ui/shared/nutrient_text.h"
#include "ui/shared/wrapping_row.h"

#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr int kListWidth = 216;
constexpr std::array kConfidences{80, 90, 95, 99};  // percent
constexpr int kUsualConfidence = 2;

void enlarge(QLabel& label, double factor) {
  QFont large = label.font();
  large.setPointSizeF(large.pointSizeF() * factor);
  large.setBold(true);
  label.setFont(large);
}

QString asList(const QStringList& lines) {
  QString html = QStringLiteral("<ul style='margin-left: 12px; -qt-list-indent: 0'>");
  for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(line.toHtmlEscaped());
  return html + QStringLiteral("</ul>");
}

}  // namespace

StudyPage::StudyPage(IntakeDesk& intake, OpenCollection& collection, IntakeDesk::Clock today, QWidget* parent)
    : QWidget(parent),
      desk_(new StudyDesk(intake, collection, std::move(today), this)),
      heading_(new QLabel),
      subject_(new QComboBox),
      precision_(new NumberField),
      confidence_(new QComboBox),
      first_(new DateField),
      days_(new QLabel),
      words_(new QLabel),
      write_(new QPushButton(tr("Plan…"))),
      report_(new QPushButton(tr("Report…"))),
      faeces_(new FaecesCard(*desk_)),
      banner_(makeBanner()) {
  auto* groups = new GroupChoice(intake);
  groups->setFixedWidth(kListWidth);
  auto* middle = new QVBoxLayout;
  middle->setContentsMargins(0, 8, 0, 0);
  middle->addWidget(heading_);
  middle->addWidget(banner_);
  middle->addWidget(makePlan(), 3);
  middle->addWidget(faeces_, 2);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(12);
  layout->addWidget(groups);
  layout->addLayout(middle, 1);
  enlarge(*heading_, 1.3);
  setFocusProxy(subject_);
  wire();
  showSubjects();
  showGroup();
}

QWidget* StudyPage::makeForm() {
  constexpr double kFinest = 1.0;
  constexpr double kCoarsest = 50.0;
  subject_->setAccessibleName(tr("What is to be known"));
  precision_->setAccessibleName(tr("Half of the interval, in percent of the mean"));
  precision_->findChild<QLineEdit*>()->setAccessibleName(precision_->accessibleName());
  precision_->setRange(kFinest, kCoarsest);
  precision_->setDecimals(0);
  precision_->setValue(10.0);
  precision_->setPrefix(QStringLiteral("± "));
  precision_->setSuffix(QStringLiteral(" %"));
  confidence_->setAccessibleName(tr("Confidence"));
  for (const int one : kConfidences) confidence_->addItem(tr("%1 % confidence").arg(one), one);
  confidence_->setCurrentIndex(kUsualConfidence);
  first_->setAccessibleName(tr("First day of the study"));
  first_->findChild<QLineEdit*>()->setAccessibleName(tr("First day of the study"));
  first_->setDate(desk_->tomorrow());
  write_->setToolTip(tr("The plan as a page for the kitchen: PDF or HTML"));
  report_->setToolTip(tr("The report of these days, once they are over: PDF, XLSX or HTML"));
  auto* form = new QWidget;
  auto* row = new WrappingRow(form);
  subject_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  row->addWidget(new QLabel(tr("Mean of")));
  row->addWidget(subject_);
  row->addWidget(precision_);
  row->addWidget(confidence_);
  row->addWidget(new QLabel(tr("from")));
  row->addWidget(first_);
  row->addWidget(write_);
  row->addWidget(report_);
  return form;
}

QFrame* StudyPage::makePlan() {
  auto* card = new QFrame;
  QVBoxLayout* layout = layOutCard(
      *card, tr("Plan a study: how many days, by how the group's own days differ from each other"));
  enlarge(*days_, 1.6);
  days_->setAccessibleDescription(tr("Days of the study"));
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::RichText);
  words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  words_->setAccessibleDescription(tr("Why so many days, and what is done on each"));
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(words_);
  scroll->setAccessibleName(tr("The plan"));
  layout->addWidget(makeForm());
  layout->addWidget(days_);
  layout->addWidget(scroll, 1);
  return card;
}

void StudyPage::wire() {
  connect(&desk_->intake(), &IntakeDesk::groupsChanged, this, &StudyPage::showGroup);
  connect(&desk_->intake(), &IntakeDesk::trendChanged, this, &StudyPage::showSubjects);
  connect(desk_, &StudyDesk::answered, this, &StudyPage::showAnswer);
  connect(subject_, &QComboBox::activated, this, &StudyPage::workOut);
  connect(precision_, &QDoubleSpinBox::valueChanged, this, &StudyPage::workOut);
  connect(confidence_, &QComboBox::activated, this, &StudyPage::workOut);
  connect(first_, &QDateEdit::dateChanged, this, &StudyPage::workOut);
  connect(write_, &QPushButton::clicked, this, [this] {
    if (desk_->plan() != nullptr) emit planToWrite(*desk_->plan());
  });
  connect(report_, &QPushButton::clicked, this, [this] {
    if (desk_->plan() != nullptr) emit reportWanted(daysOfPlan(*desk_->plan()));
  });
  connect(&desk_->collection(), &OpenCollection::refused, this, [this](const Refusal& refusal) {
    if (!isVisible()) return;
    banner_->setText(refusalText(refusal));
    banner_->show();
  });
  connect(&desk_->collection(), &OpenCollection::written, banner_, &QWidget::hide);
}

/// All food as fed, then what some food of the bowls tells.
void StudyPage::showSubjects() {
  const QSignalBlocker quiet(subject_);
  const QString chosen = subject_->currentData().toString();
  subject_->clear();
  subject_->addItem(tr("all food, g as fed"), QString());
  if (desk_->intake().trend())
    for (const food::NutrientId nutrient : nutrientsTold(desk_->intake().trend()->problem))
      subject_->addItem(nutrientName(nutrient),
                        QString::fromStdString(std::string(food::describe(nutrient).tagname)));
  subject_->setCurrentIndex(std::max(0, subject_->findData(chosen)));
}

void StudyPage::showGroup() {
  const IntakeGroup* group = desk_->intake().group();
  heading_->setText(group != nullptr ? group->name : tr("No group has a bowl yet"));
  if (group != nullptr && group->fed && desk_->answer() == std::nullopt) workOut();
}

void StudyPage::workOut() {
  transfer::StudyAsked asked{.first = toDate(first_->date()),
                             .precision = precision_->value() / 100.0,
                             .confidence = confidence_->currentData().toInt() / 100.0};
  const std::string tagname = subject_->currentData().toString().toStdString();
  if (!tagname.empty()) asked.nutrient = food::findByTagname(tagname);
  desk_->workOut(asked);
}

void StudyPage::showAnswer() {
  const exchange::StudyPlanToWrite* plan = desk_->plan();
  write_->setEnabled(plan != nullptr);
  report_->setEnabled(plan != nullptr && toQDate(plan->first) < desk_->tomorrow());
  if (plan != nullptr) {
    days_->setText(planHeading(*plan));
    words_->setText(QStringLiteral("<p>%1</p>").arg(planReason(*plan).toHtmlEscaped()) +
                    asList(planSteps(*plan)));
    return;
  }
  const auto* none = desk_->answer() ? std::get_if<transfer::NoStudyPlan>(&*desk_->answer()) : nullptr;
  days_->setText(none != nullptr ? tr("? No plan") : QString());
  words_->setText(none != nullptr ? noPlanText(*none).toHtmlEscaped() : QString());
}

}  // namespace tarebowl::ui
