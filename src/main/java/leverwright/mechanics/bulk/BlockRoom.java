package leverwright.mechanics.bulk;

import leverwright.mechanics.numeric.RotationBlock;

/**
 * Room for what is found on the way to a block's numbers; to be used again and again, so that it stays in the processor's nearest
 * cache. Made in one go: see {@link RotationBlock#row}.
 */
final class BlockRoom {
    final RotationBlock rotation = new RotationBlock();
    final double[] sumX = RotationBlock.row();
    final double[] sumY = RotationBlock.row();
    final double[] sumMoment = RotationBlock.row();
    final double[] carried = RotationBlock.row();
    final double[] ownX = RotationBlock.row();
    final double[] ownY = RotationBlock.row();
    final double[] ownMoment = RotationBlock.row();
    final double[] forceX = RotationBlock.row();
    final double[] forceY = RotationBlock.row();
    final double[] spare = RotationBlock.row();
    /** Two rows that a chain's links take in turn, then one for each link. */
    final double[][] sines;

    final double[][] cosines;

    BlockRoom(int links) {
        sines = new double[links + 2][];
        cosines = new double[links + 2][];
        for (int k = 0; k < links + 2; k++) {
            sines[k] = RotationBlock.row();
            cosines[k] = RotationBlock.row();
        }
    }
}
