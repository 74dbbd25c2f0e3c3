package drawwell.android

import android.graphics.Bitmap
import android.graphics.Canvas
import android.view.View
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.ViewRootForTest
import androidx.compose.ui.test.SemanticsNodeInteraction

/** What a view is drawn as, without a screen that shows it. */
internal fun View.drawn(): Bitmap =
    Bitmap.createBitmap(width, height, Bitmap.Config.ARGB_8888).also { draw(Canvas(it)) }

/** The colour that is drawn in the first corner of a node, where nothing stands. */
internal fun SemanticsNodeInteraction.corner(): Color {
    val node = fetchSemanticsNode()
    val view = (node.root as ViewRootForTest).view
    return Color(view.drawn().getPixel(node.boundsInRoot.left.toInt() + INSIDE, node.boundsInRoot.top.toInt() + INSIDE))
}

private const val INSIDE = 2
