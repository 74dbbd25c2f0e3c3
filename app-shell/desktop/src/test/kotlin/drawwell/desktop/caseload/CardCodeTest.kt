package drawwell.desktop.caseload

import drawwell.desktop.DesktopTypefaces
import drawwell.desktop.pictures.Rendering
import drawwell.desktop.pictures.dressed
import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.Desk
import drawwell.surface.DeskEvent
import drawwell.surface.Event
import drawwell.surface.Hand
import drawwell.surface.Opening
import drawwell.surface.Palette
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.caseload.CaseloadView
import java.util.concurrent.TimeUnit
import org.junit.Assert.assertEquals
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder

/** The code as it is drawn, read by another's program: zbar's `zbarimg` (ISO/IEC 18004), which Debian calls zbar-tools. */
class CardCodeTest {
    @get:Rule
    val folder = TemporaryFolder()

    private val typefaces = DesktopTypefaces.load()

    @Test
    fun theCodeSaysTheLineInEveryLookAndAtTwiceTheType() {
        val now = Clock(1_780_000_000_000L, "Europe/Berlin")
        val (window, line) = Desk.open(folder.root.path, Opening("desk", "en", false), now).use { desk ->
            desk.update(Event.Enter("settings", "sheet_name", "Hanne Voß"), now)
            val window = desk.update(Event.OnDesk(DeskEvent.OpenDesk(Place.OwnCard)), now).caseload
            window to (window.beside as Screen.Card).card.line
        }
        for (palette in listOf(Palette.LIGHT, Palette.NIGHT)) {
            for (type in listOf(1f, 2f)) {
                val image = Rendering.desk(type) {
                    CaseloadView(window.dressed(Appearance(Hand.RIGHT, palette)), typefaces, reducedMotion = true) {}
                }
                val picture = folder.root.resolve("$palette-$type.png")
                Rendering.write(picture, image)
                assertEquals("$palette at $type", line, read(picture.path))
            }
        }
    }

    private fun read(picture: String): String {
        val zbar = ProcessBuilder("zbarimg", "--quiet", "--raw", "--oneshot", picture).redirectError(ProcessBuilder.Redirect.DISCARD).start()
        val said = zbar.inputStream.readBytes().decodeToString().removeSuffix("\n")
        check(zbar.waitFor(60, TimeUnit.SECONDS)) { "zbarimg does not end" }
        return said
    }
}
