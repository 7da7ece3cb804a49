#include "tests/pictures/projector_pictures.h"

#include <QTest>

#include "tests/pictures/picture.h"
#include "ui/projecting/calibration_tool.h"
#include "ui/projecting/projector_view.h"
#include "ui/window/main_window.h"

namespace coutil {

bool takeProjecting(MainWindow& window, const QDir& folder, const QString& suffix) {
    ProjectorView& projector = window.project();
    projector.showNormal();
    projector.resize(window.size());
    bool all = true;
    const auto take = [&](const char* name) {
        settle(200);
        all = savePicture(projector, folder, QLatin1String(name) + suffix) && all;
    };
    if (projector.calibrating().isHidden()) QTest::keyClick(&projector, Qt::Key_C);
    take("projector-calibrating");
    // A projector about 1.2 m wide over the table.
    const double pxPerMm = window.width() / 1200.0;
    emit projector.calibrating().calibrated({pxPerMm, pxPerMm * 1.03});
    emit projector.calibrating().left();
    take("projector");
    for (int i = 0; i < 3; ++i) QTest::keyClick(&projector, Qt::Key_Tab);
    for (const int key : {Qt::Key_R, Qt::Key_R, Qt::Key_I, Qt::Key_G, Qt::Key_M}) {
        QTest::keyClick(&projector, static_cast<Qt::Key>(key));
    }
    take("projector-turned");
    for (const int key : {Qt::Key_0, Qt::Key_I, Qt::Key_G, Qt::Key_M, Qt::Key_Escape}) {
        QTest::keyClick(&projector, static_cast<Qt::Key>(key));
    }
    return all;
}

}  // namespace coutil
