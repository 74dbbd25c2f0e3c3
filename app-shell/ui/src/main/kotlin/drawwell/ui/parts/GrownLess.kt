package drawwell.ui.parts

import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.unit.Density

/** What is large already grows with the type, but less, so that all that is tapped in a hurry is seen at once. */
@Composable
internal fun GrownLess(content: @Composable () -> Unit) {
    val density = LocalDensity.current
    if (density.fontScale <= MOST) return content()
    CompositionLocalProvider(LocalDensity provides Density(density.density, MOST), content = content)
}

private const val MOST = 1.4f
