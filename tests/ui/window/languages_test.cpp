// The languages of the program: every problem has its German sentence, plurals are those of the
// language, and the German window cuts off nothing.
#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QTranslator>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/bench.h"
#include "ui/benches/fold_out.h"
#include "ui/window/folio_files.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/trade_words.h"
#include "ui/words/users_language.h"

namespace coutil {
namespace {

// Speaks the language of a locale as long as it lives.
class Language {
  public:
    explicit Language(const QLocale& locale) {
        QLocale::setDefault(locale);
        speakUsersLanguage(*QCoreApplication::instance());
    }
    ~Language() {
        for (QTranslator* translator : QCoreApplication::instance()->findChildren<QTranslator*>()) {
            delete translator;
        }
        QLocale::setDefault(QLocale::c());
    }
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
};

QLocale german() { return QLocale(QStringLiteral("de_DE")); }

QString sentenceOf(ProblemCode code) {
    Problem problem;
    problem.code = code;
    problem.subject = "1-2";
    problem.detail = "waist";
    problem.panel = std::string("3");
    for (const char* name : {"value", "limit", "lowest", "highest", "other", "target", "spread",
                             "percent", "difference", "expected"}) {
        problem.figures.push_back({name, 12.5});
    }
    for (const char* name : {"line", "column", "file", "program"}) {
        problem.figures.push_back({name, 7, FigureUnit::count});
    }
    return problemSentence(problem, LengthUnit::centimetre);
}

QString panelsOnTheTable(int count) {
    return QCoreApplication::translate("coutil::Table", "%n panel(s) on the table", nullptr, count);
}

TEST(Languages, everyProblemHasAGermanSentence) {
    for (const ProblemCode code : allProblemCodes()) {
        const QString english = sentenceOf(code);
        const Language spoken(german());
        const QString translated = sentenceOf(code);
        EXPECT_NE(translated, english);
        EXPECT_FALSE(translated.contains('{') || translated.contains('['))
            << qPrintable(translated);
        // A pattern that lost a figure in translation would be shorter by it.
        EXPECT_EQ(translated.contains("1,25"), english.contains("1.25")) << qPrintable(translated);
    }
}

// Plural rules from memory: one in both languages is 1 alone, 0 is like many.
TEST(Languages, pluralsAreThoseOfTheLanguage) {
    {
        const Language spoken(german());
        EXPECT_EQ(panelsOnTheTable(0), "0 Schnittteile auf dem Tisch");
        EXPECT_EQ(panelsOnTheTable(1), "1 Schnittteil auf dem Tisch");
        EXPECT_EQ(panelsOnTheTable(6), "6 Schnittteile auf dem Tisch");
    }
    for (const QLocale& locale : {QLocale(QStringLiteral("en_GB")), QLocale::c(),
                                  QLocale(QStringLiteral("fi_FI"))}) {  // no Finnish: English
        const Language spoken(locale);
        EXPECT_EQ(panelsOnTheTable(0), "0 panels on the table") << qPrintable(locale.name());
        EXPECT_EQ(panelsOnTheTable(1), "1 panel on the table") << qPrintable(locale.name());
        EXPECT_EQ(panelsOnTheTable(6), "6 panels on the table") << qPrintable(locale.name());
    }
}

TEST(Languages, numbersAreWrittenAsTheLanguageDoes) {
    const QString space(QChar(QChar::Nbsp));
    EXPECT_EQ(lengthText(325, LengthUnit::centimetre), "32.5" + space + "cm");
    const Language spoken(german());
    EXPECT_EQ(lengthText(325, LengthUnit::centimetre), "32,5" + space + "cm");
}

// Qt's own words speak the same language as ours: never German with English buttons, nor English
// with French ones.
TEST(Languages, qtSpeaksTheSameLanguage) {
    const auto cancel = [] { return QCoreApplication::translate("QPlatformTheme", "Cancel"); };
    {
        const Language spoken(german());
        EXPECT_EQ(cancel(), "Abbrechen");
    }
    const Language spoken(QLocale(QStringLiteral("fr_FR")));
    EXPECT_EQ(cancel(), "Cancel");
}

class GermanWindowTest : public WindowTest {
  protected:
    // Lies beside what one of the widgets around it shows.
    static bool runsOut(const QWidget& widget) {
        for (const QWidget* around = widget.parentWidget(); around != nullptr;
             around = around->parentWidget()) {
            const int left = widget.mapTo(around, QPoint(0, 0)).x();
            if (left < 0 || left + widget.width() > around->width()) return true;
            if (around->isWindow()) break;
        }
        return false;
    }

    // Visible words that are wider than the place they have; words that wrap need no width.
    [[nodiscard]] QStringList cutOff(int& seen) const {
        QStringList found;
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            const auto* label = qobject_cast<const QLabel*>(widget);
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const bool isWords = label != nullptr ? !label->wordWrap()
                                                  : qobject_cast<const QPushButton*>(widget) ||
                                                        qobject_cast<const QCheckBox*>(widget);
            if (!isWords || !widget->isVisible()) continue;
            const QString text = label != nullptr ? label->text() : button->text();
            if (text.isEmpty()) continue;
            ++seen;
            if (!runsOut(*widget) && widget->sizeHint().width() <= widget->width()) continue;
            found << QStringLiteral("%1 '%2': %3 of %4 px")
                         .arg(widget->metaObject()->className(), text)
                         .arg(widget->width())
                         .arg(widget->sizeHint().width());
        }
        return found;
    }

    const Language spoken_{german()};
};

TEST_F(GermanWindowTest, cutsOffNothing) {
    window_->resize(1280, 800);
    QApplication::processEvents();
    int seen = 0;
    EXPECT_EQ(cutOff(seen).join('\n').toStdString(), "");
    EXPECT_GE(seen, 2);
    window_->files().openDemo();
    ASSERT_FALSE(window_->benches().isEmpty());
    for (int i = 0; i < window_->benches().size(); ++i) {
        window_->enterBench(i);
        for (auto* fold : window_->findChildren<FoldOut*>()) fold->setOpen(true);
        QApplication::processEvents();
        seen = 0;
        EXPECT_EQ(cutOff(seen).join('\n').toStdString(), "")
            << window_->benches()[i]->benchName().toStdString();
        EXPECT_GE(seen, 10);
    }
}

// The contexts of the translation are those the program asks for: one wrong, and a whole part of
// the window stays English.
TEST_F(GermanWindowTest, isGerman) {
    window_->files().openDemo();
    EXPECT_EQ(window_->benches().front()->benchName(), "Maßnehmen");
    QStringList menus;
    for (const QMenu* menu : window_->findChildren<QMenu*>()) menus << menu->title();
    EXPECT_TRUE(menus.contains("&Mappe")) << menus.join(' ').toStdString();
    EXPECT_TRUE(window_->windowTitle().startsWith("Leonore, Sopran"))
        << window_->windowTitle().toStdString();
}

}  // namespace
}  // namespace coutil
