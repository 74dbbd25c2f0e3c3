package drawwell.desktop

import androidx.compose.ui.graphics.toAwtImage
import androidx.compose.ui.graphics.toComposeImageBitmap
import org.jetbrains.skia.Data
import org.jetbrains.skia.Surface
import org.jetbrains.skia.svg.SVGDOM
import java.awt.Image

/** The mark as a picture for the window and the tray. */
object Icon {
    private const val SIDE = 256

    fun picture(): Image {
        val mark = checkNotNull(javaClass.getResourceAsStream("/drawwell/mark.svg")) { "the mark is not bundled" }
        val drawing = SVGDOM(Data.makeFromBytes(mark.use { it.readBytes() }))
        drawing.setContainerSize(SIDE.toFloat(), SIDE.toFloat())
        return Surface.makeRasterN32Premul(SIDE, SIDE).use { surface ->
            drawing.render(surface.canvas)
            surface.makeImageSnapshot().toComposeImageBitmap().toAwtImage()
        }
    }
}
