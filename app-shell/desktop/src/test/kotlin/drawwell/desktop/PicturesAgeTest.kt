package drawwell.desktop

import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.toComposeImageBitmap
import drawwell.desktop.pictures.Pictures
import drawwell.ui.pictures.Older
import org.jetbrains.skia.Bitmap
import org.jetbrains.skia.IRect
import org.jetbrains.skia.Image
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

/**
 * The pictures that the pages show are those of the screens as they are now: each is drawn
 * again and held to its file. `cargo xtask pictures --docs` makes them anew.
 */
class PicturesAgeTest {
    private val shown = File(System.getProperty("drawwell.pictures"))
    private val names = shown.listFiles().orEmpty().map { it.name }.filter { it.endsWith(".png") && it != SET_NOT_DRAWN }

    @Test
    fun noPictureIsOlderThanItsScreen() {
        assertTrue("no pictures in $shown", names.isNotEmpty())
        val wanted = names.map { it.removeSuffix(".png") }
        val drawn = mutableSetOf<String>()
        val old = mutableListOf<String>()
        Pictures(wanted) { name, picture ->
            drawn += name
            if (differs(Image.makeFromEncoded(shown.resolve("$name.png").readBytes()), picture)) old += name
        }.take()
        assertEquals("pictures of no screen", emptySet<String>(), wanted.toSet() - drawn)
        assertEquals("older than their screens: cargo xtask pictures --docs", emptyList<String>(), old)
    }

    @Test
    fun aWordThatChangesIsSeen() {
        val name = names.first().removeSuffix(".png")
        val picture = shown.resolve("$name.png").readBytes()
        val bitmap = Bitmap.makeFromImage(Image.makeFromEncoded(picture))
        assertTrue(!differs(Image.makeFromEncoded(picture), Image.makeFromBitmap(bitmap)))
        bitmap.erase(INK, IRect.makeXYWH(WORD, WORD, WORD, WORD))
        assertTrue(differs(Image.makeFromEncoded(picture), Image.makeFromBitmap(bitmap)))
    }

    private fun differs(kept: Image, fresh: Image) =
        kept.width != fresh.width || Older.than(kept.toComposeImageBitmap().dots(), fresh.toComposeImageBitmap().dots())

    private fun ImageBitmap.dots() = IntArray(width * height).also { readPixels(it) }

    private companion object {
        const val SET_NOT_DRAWN = "visit-sheet.png"
        const val WORD = 40
        const val INK = 0xFF7F3F1F.toInt()
    }
}
