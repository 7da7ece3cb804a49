#include "tests/ui/window/window_fixture.h"

#include <QApplication>
#include <QTest>
#include <utility>

#include "tests/ui/window/singer.h"
#include "ui/benches/measure_bench.h"
#include "ui/benches/measurement_row.h"

namespace coutil {

void WindowTest::SetUp() {
    ASSERT_TRUE(home_.isValid());
    qputenv("HOME", home_.path().toUtf8());
    openWindow();
}

void WindowTest::openWindow() {
    auto answers = std::make_unique<QueuedAnswers>();
    answers_ = answers.get();
    window_ = std::make_unique<MainWindow>(std::move(answers));
    window_->show();
    window_->activateWindow();
    QApplication::processEvents();
}

void WindowTest::die() {
    answers_ = nullptr;
    window_.reset();
}

MeasureBench& WindowTest::measure() {
    return *qobject_cast<MeasureBench*>(window_->benches().front());
}

MeasurementRow& WindowTest::row(Measurement id) { return measure().row(id); }

void WindowTest::type(Measurement id, const QString& text) {
    LengthField& field = row(id).field();
    field.setFocus(Qt::MouseFocusReason);
    field.selectAll();
    if (text.isEmpty()) QTest::keyClick(&field, Qt::Key_Delete);
    QTest::keyClicks(&field, text);
    QTest::keyClick(&field, Qt::Key_Tab);
}

void WindowTest::typeSinger() {
    const Folio singer = singersFolio();
    for (const auto& [id, mm] : singer.measurementSets.front().valuesMm) {
        type(id, QString::fromStdString(writtenLength(mm, LengthUnit::centimetre)));
    }
}

QString WindowTest::path(const QString& name) const { return home_.filePath(name); }

}  // namespace coutil
