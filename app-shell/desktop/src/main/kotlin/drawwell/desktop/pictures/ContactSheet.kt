package drawwell.desktop.pictures

import org.jetbrains.skia.FilterMipmap
import org.jetbrains.skia.FilterMode
import org.jetbrains.skia.Image
import org.jetbrains.skia.MipmapMode
import org.jetbrains.skia.Rect
import org.jetbrains.skia.Surface

/** Pictures side by side, all of one height, small enough for a page. */
internal object ContactSheet {
    private const val TALL = 620
    private const val APART = 12
    private const val GROUND = 0xFFB9AFA0.toInt()

    fun of(pictures: List<Image>): Image {
        val widths = pictures.map { it.width * TALL / it.height }
        val surface = Surface.makeRasterN32Premul(widths.sum() + APART * (pictures.size + 1), TALL + APART * 2)
        surface.canvas.clear(GROUND)
        var left = APART
        pictures.zip(widths).forEach { (picture, wide) ->
            val from = Rect.makeWH(picture.width.toFloat(), picture.height.toFloat())
            val to = Rect.makeXYWH(left.toFloat(), APART.toFloat(), wide.toFloat(), TALL.toFloat())
            surface.canvas.drawImageRect(picture, from, to, FilterMipmap(FilterMode.LINEAR, MipmapMode.LINEAR), null, true)
            left += wide + APART
        }
        return surface.makeImageSnapshot()
    }
}
